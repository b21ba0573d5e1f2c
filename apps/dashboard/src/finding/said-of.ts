/** What was typed into an act's form, as the API takes it; or what is wrong with it. */
import type { components } from '@garboard/client/generated/api.d.ts';
import { idsIn } from '../evidence/picture-field.tsx';
import { strings } from '../strings/finding.ts';
import { strings as recordStrings } from '../strings/record.ts';
import type { FormFault, Typed } from '../ui/quick-form.tsx';
import { readDate } from '../ui/read-date.ts';
import type { Act } from './act.ts';
import type { Finding, Said } from './finding.query.ts';

type Schemas = components['schemas'];
export type Read<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly faults: readonly FormFault[] };

/** Reads boxes one by one and gathers every fault. */
export class Reader {
  readonly faults: FormFault[] = [];
  readonly #typed: Typed;
  constructor(typed: Typed) {
    this.#typed = typed;
  }

  text(key: string): string {
    return (this.#typed[key] ?? '').trim();
  }

  /** Absent where nothing was typed. */
  maybe<K extends string>(key: K, text = this.text(key)): { [Each in K]?: string } {
    return text === '' ? {} : ({ [key]: text } as { [Each in K]?: string });
  }

  day(key: string): string {
    const read = readDate(this.text(key));
    if (read.kind === 'fault') this.faults.push({ at: key, words: read.why });
    else if (read.date.length < 10) this.faults.push({ at: key, words: recordStrings.dateFaults.day });
    return read.kind === 'read' ? read.date : '';
  }

  maybeDay<K extends string>(key: K): { [Each in K]?: string } {
    return this.text(key) === '' ? {} : this.maybe(key, this.day(key));
  }

  estimate(): { estimate?: Schemas['Estimate'] } {
    const text = this.text('estimate');
    if (text === '') return {};
    const [, amount, currency] = /^(\d{1,13}(?:[.,]\d{1,2})?)\s*([A-Za-z]{3})$/.exec(text) ?? [];
    if (!amount || !currency) this.faults.push({ at: 'estimate', words: strings.boxes.estimateFault });
    return {
      estimate: {
        amount: (amount ?? '').replace(',', '.'),
        currency: (currency ?? '').toUpperCase(),
        author: this.text('author'),
      },
    };
  }

  evidence(): Schemas['FindingEvidence'][] {
    const words = this.text('evidence');
    const pictures = idsIn(this.text('pictures'));
    if (pictures.length === 0) return words === '' ? [] : [{ kind: 'looked', words }];
    return pictures.map((evidenceId) => ({ kind: 'photograph', words: words || strings.one.photograph, evidenceId }));
  }

  told<T>(value: T): Read<T> {
    return this.faults.length > 0 ? { ok: false, faults: this.faults } : { ok: true, value };
  }
}

export function saidOf(act: Act, typed: Typed, finding: Finding): Read<Said> {
  const read = new Reader(typed);
  return read.told(said(act, read, finding));
}

const remedy = (body: Schemas['RemedyStep']): Said => ({ act: 'remedy', body });
type Urgent = { urgency?: Schemas['UrgencyCode']; urgentBy?: string };

function urgent(read: Reader): Urgent {
  const weeks = read.text('urgency') === 'within_weeks' ? read.maybeDay('urgentBy') : {};
  return { ...(read.maybe('urgency') as Urgent), ...weeks };
}

function said(act: Act, read: Reader, finding: Finding): Said {
  const trade = read.maybe('trade') as { trade?: Schemas['TradeCode'] };
  switch (act) {
    case 'look': {
      const seen = read.text('seen') as Schemas['SeenCode'];
      const body = { seen, on: read.day('on'), ...read.maybe('words'), ...urgent(read), evidence: read.evidence() };
      return { act: 'sighting', body };
    }
    case 'propose':
      return remedy({ step: 'propose', work: read.text('work'), ...trade, ...read.estimate() });
    case 'plan':
      return remedy({
        step: 'plan',
        ...read.maybe('work'),
        ...read.maybeDay('forDay'),
        ...trade,
        ...read.maybe('responsible'),
      });
    case 'begin':
      return remedy({ step: 'begin', ...read.maybe('words') });
    case 'report_done':
      return remedy(reported(read, finding));
    case 'verify': {
      const right = read.text('right') === 'yes';
      return {
        act: 'verification',
        body: { right, ...(!right && read.maybe('words')), evidence: right ? read.evidence() : [] },
      };
    }
    case 'defer':
      return remedy({ step: 'defer', until: read.day('until'), ...left(read) });
    case 'accept':
      return remedy({ step: 'accept', ...left(read) });
    case 'change':
      return { act: 'change', body: changed(read, finding) };
    case 'enter_in_error':
      return remedy({ step: 'enter_in_error', reason: read.text('reason') });
    case 'reopen':
      return remedy({ step: 'reopen', reason: read.text('reason') });
  }
}

const left = (read: Reader) => ({
  reviewOn: read.day('reviewOn'),
  responsible: read.text('responsible'),
  reason: read.text('reason'),
});

function reported(read: Reader, { item }: Finding): Schemas['RemedyStep'] {
  const doneOn = read.day('doneOn');
  const capacity = read.text('capacity') as Schemas['WorkDoneBy']['capacity'];
  const doneBy = { name: read.text('name'), capacity, ...read.maybe('certificate') };
  const fact = read.text('fact') as Schemas['NewFact']['fact'] | '';
  const facts =
    item && fact !== ''
      ? [{ itemId: item.id, fact: { fact, on: doneOn, outcome: 'passed', evidence: 'record' } as const }]
      : [];
  return {
    step: 'report_done',
    work: read.text('work'),
    doneOn,
    ...(read.text('by') === 'another' && { doneBy }),
    evidence: read.evidence(),
    facts,
  };
}

/** Only what differs: what is not sent stays as somebody else may have written it meanwhile. */
function changed(read: Reader, finding: Finding): Schemas['FindingChange'] {
  const typed = {
    zone: read.text('zone'),
    what: read.text('what'),
    hazard: read.text('hazard'),
    trade: read.text('trade') || null,
    responsible: read.text('responsible') || null,
  };
  const before = {
    zone: finding.zone,
    what: finding.what,
    hazard: finding.hazard,
    trade: finding.trade ?? null,
    responsible: finding.responsible ?? null,
  };
  const keys = (Object.keys(typed) as (keyof typeof typed)[]).filter((key) => typed[key] !== before[key]);
  const { urgency, urgentBy } = urgent(read);
  const isSame = urgency === finding.urgency && (urgentBy ?? '') === (finding.urgentBy ?? '');
  return {
    ...(Object.fromEntries(keys.map((key) => [key, typed[key]])) as Schemas['FindingChange']),
    ...(!isSame && { ...(urgency && { urgency }), ...(urgentBy && { urgentBy }) }),
    ...read.maybe('reason'),
  };
}
