/** What somebody has typed so far about a fact; every box is text until it is sent. */
import type { components } from '@garboard/client/generated/api.d.ts';
import type { FactCode } from '../strings/codes.ts';
import { strings } from '../strings/record.ts';
import { formatDay, formatRecordedDate } from '../ui/calendar.ts';
import { readDate } from '../ui/read-date.ts';
import type { Fact } from './item.query.ts';

export type NewFact = components['schemas']['NewFact'];

const BOXES = [
  'item',
  'fact',
  'on',
  'test',
  'outcome',
  'name',
  'capacity',
  'certificate',
  'evidence',
  'until',
  'readingValue',
  'readingUnit',
  'readOn',
  'note',
] as const;
export type Box = (typeof BOXES)[number];
export type Draft = Readonly<Record<Box, string>>;
export type Faults = Partial<Record<Box, string>>;

export const emptyDraft: Draft = {
  ...(Object.fromEntries(BOXES.map((box) => [box, ''])) as Draft),
  outcome: 'passed',
  evidence: 'unknown',
  readingUnit: 'hours',
};

/** A correction starts from what it corrects: most of it is usually right. */
export function draftOf(fact: Fact): Draft {
  return {
    item: fact.itemId,
    fact: fact.fact,
    on: formatRecordedDate(fact.on),
    test: fact.test ?? '',
    outcome: fact.outcome,
    name: fact.doneBy?.name ?? '',
    capacity: fact.doneBy?.capacity ?? '',
    certificate: fact.doneBy?.certificate ?? '',
    evidence: fact.evidence,
    until: fact.until ? formatDay(fact.until) : '',
    readingValue: fact.reading ? String(fact.reading.value) : '',
    readingUnit: fact.reading?.unit ?? 'hours',
    readOn: fact.readOn ? formatDay(fact.readOn) : '',
    note: '',
  };
}

/** Which boxes a kind of fact has beyond what happened, when, evidence and note. */
export function boxesOf(fact: string): {
  outcome: boolean;
  doneBy: boolean;
  until: boolean;
  reading: boolean;
  readOn: boolean;
} {
  const work = ['serviced', 'tested', 'inspected', 'overhauled'].includes(fact);
  const plate = fact === 'manufactured' || fact === 'printed_expiry';
  return {
    outcome: work,
    doneBy: fact !== '' && !plate && fact !== 'meter' && fact !== 'moved',
    until: fact === 'extended',
    reading: fact === 'meter',
    readOn: plate,
  };
}

type Ready = { kind: 'ready'; body: NewFact } | { kind: 'faults'; faults: Faults };

/** The request, or what keeps it from being one. Whether it can be true is the API's to say. */
export function toNewFact(draft: Draft, corrects: string | undefined): Ready {
  const has = boxesOf(draft.fact);
  const on = readDate(draft.on);
  const until = has.until ? wholeDay(draft.until) : null;
  const readOn = has.readOn && draft.readOn.trim() !== '' ? wholeDay(draft.readOn) : null;
  const value = has.reading ? readNumber(draft.readingValue) : null;
  const faults: Faults = {
    ...(draft.item === '' && { item: strings.form.chooseItem }),
    ...(draft.fact === '' && { fact: strings.form.chooseFact }),
    ...(on.kind === 'fault' && { on: on.why }),
    ...(until?.kind === 'fault' && { until: until.why }),
    ...(readOn?.kind === 'fault' && { readOn: readOn.why }),
    ...(value !== null && Number.isNaN(value) && { readingValue: strings.form.notANumber }),
  };
  if (on.kind === 'fault' || Object.keys(faults).length > 0) return { kind: 'faults', faults };
  const body = {
    fact: draft.fact as FactCode,
    on: on.date,
    evidence: draft.evidence,
    ...(draft.test && { test: draft.test }),
    ...(has.outcome && { outcome: draft.outcome }),
    ...(has.doneBy && doneBy(draft)),
    ...(until?.kind === 'read' && { until: until.date }),
    ...(readOn?.kind === 'read' && { readOn: readOn.date }),
    ...(value !== null && { reading: { value, unit: draft.readingUnit } }),
    ...(draft.note.trim() && { note: draft.note.trim() }),
    ...(corrects && { corrects }),
  };
  // Every code in it was chosen from a list of the API's codes.
  return { kind: 'ready', body: body as NewFact };
}

/** Strikes it out with nothing in its place: only the reason is taken from the form. */
export function retractionOf({ id, fact, on }: Fact, note: string): NewFact {
  const said = note.trim();
  return {
    fact,
    on,
    outcome: 'passed',
    evidence: 'unknown',
    corrects: id,
    retracts: true,
    ...(said && { note: said }),
  };
}

function doneBy({ name, capacity, certificate }: Draft) {
  const given = {
    ...(name.trim() && { name: name.trim() }),
    ...(capacity && { capacity }),
    ...(certificate.trim() && { certificate: certificate.trim() }),
  };
  return Object.keys(given).length > 0 ? { doneBy: given } : {};
}

function wholeDay(typed: string) {
  const read = readDate(typed);
  return read.kind === 'read' && read.date.length < 10 ? { kind: 'fault' as const, why: strings.dateFaults.day } : read;
}

/** A decimal comma is a decimal point; an empty box is not nought. */
function readNumber(typed: string): number {
  const text = typed.trim().replace(',', '.');
  return text === '' ? Number.NaN : Number(text);
}
