/** What somebody has typed so far of an own rule, and what of it can be sent. */
import type { components } from '@garboard/client/generated/api.d.ts';
import { strings } from '../strings/own-rule.ts';
import { strings as recordStrings } from '../strings/record.ts';
import { readDate } from '../ui/read-date.ts';
import { readPeriod } from '../ui/read-period.ts';
import { type LimitBox, limitsOf } from './own-rule-limits.ts';

type Schemas = components['schemas'];
export type NewOwnRule = Schemas['NewOwnRule'];
type Text = Schemas['OwnRuleText'];

export type OwnRuleBox = keyof typeof strings.box;
export type OwnRuleFaults = Partial<Record<OwnRuleBox, string>>;
type Listed = 'kinds' | 'vesselIds';

export type OwnRuleDraft = Readonly<Record<Exclude<OwnRuleBox, Listed>, string>> & {
  readonly kinds: readonly string[];
  readonly vesselIds: readonly string[];
  /** What the form has no box for, kept as it was. */
  readonly moreLimits: Text['limits'];
  readonly moreResets: Text['resets'];
};

export type ReadyRule =
  | { readonly kind: 'ready'; readonly body: NewOwnRule; readonly limitBoxes: readonly LimitBox[] }
  | { readonly kind: 'faults'; readonly faults: OwnRuleFaults };

const NEEDED = ['inWords', 'actionWords', 'decidedBy', 'reason', 'document'] as const;
const PERIODS = ['lastDone', 'installed', 'manufactured', 'within', 'first', 'before', 'after'] as const;

export function toNewOwnRule(draft: OwnRuleDraft): ReadyRule {
  const takesEffectOn = readDay(draft.takesEffectOn);
  const limits = limitsOf(draft);
  const faults: OwnRuleFaults = {
    ...Object.fromEntries(NEEDED.filter((box) => draft[box].trim() === '').map((box) => [box, strings.faults.empty])),
    ...Object.fromEntries(
      PERIODS.filter((box) => draft[box].trim() !== '' && readPeriod(draft[box]) === null).map((box) => [
        box,
        strings.faults.period,
      ]),
    ),
    ...(draft.kinds.length === 0 && { kinds: strings.faults.kinds }),
    ...(draft.vessels === 'chosen' && draft.vesselIds.length === 0 && { vesselIds: strings.faults.vessels }),
    ...(draft.vessels === 'under_scheme' && draft.scheme === '' && { scheme: strings.faults.empty }),
    ...(draft.hours.trim() !== '' && !/^[1-9]\d{0,5}$/.test(draft.hours.trim()) && { hours: strings.faults.hours }),
    ...(takesEffectOn.kind === 'fault' && { takesEffectOn: takesEffectOn.why }),
  };
  const isBare = limits.length === 0 && draft.moreLimits.length === 0;
  if (isBare && Object.keys(faults).every((box) => !isLimitBox(box))) faults.lastDone = strings.faults.limits;
  if (Object.keys(faults).length > 0 || takesEffectOn.kind === 'fault') return { kind: 'faults', faults };
  const body = {
    ...textOf(
      draft,
      limits.map(({ limit }) => limit),
    ),
    ...groundsOf(draft, takesEffectOn.date),
  };
  return { kind: 'ready', body, limitBoxes: limits.map(({ box }) => box) };
}

const isLimitBox = (box: string) => ['lastDone', 'installed', 'manufactured', 'within', 'hours'].includes(box);

/** A whole day: a rule does not begin in some month. */
export function readDay(typed: string): ReturnType<typeof readDate> {
  const read = readDate(typed);
  return read.kind === 'read' && read.date.length < 10 ? { kind: 'fault', why: recordStrings.dateFaults.day } : read;
}

function groundsOf({ decidedBy, reason, document }: OwnRuleDraft, takesEffectOn: string) {
  return { takesEffectOn, decidedBy: decidedBy.trim(), reason: reason.trim(), document: document.trim() };
}

function textOf(draft: OwnRuleDraft, limits: Text['limits']): Text {
  const first = readPeriod(draft.first);
  const [before, after] = [readPeriod(draft.before), readPeriod(draft.after)];
  return {
    kinds: [...draft.kinds],
    vessels: vesselsOf(draft),
    action: { kind: draft.actionKind as Text['action']['kind'], words: draft.actionWords.trim() },
    inWords: draft.inWords.trim(),
    limits: [...limits, ...draft.moreLimits],
    ...(first && { first: { from: draft.firstFrom as 'installed' | 'manufactured', plus: first } }),
    ...((before || after) && { window: { before: before ?? 'P0D', after: after ?? 'P0D' } }),
    resets: [...resetOf(draft), ...draft.moreResets],
    weight: draft.weight as Text['weight'],
  };
}

function resetOf({ act, test, by }: OwnRuleDraft): Text['resets'] {
  if (act === '') return [];
  const reset = { act, by: by === '' ? [] : [by], ...(test !== '' && { tests: [test] }) };
  return [reset as Text['resets'][number]];
}

function vesselsOf({ vessels, scheme, vesselIds }: OwnRuleDraft): Text['vessels'] {
  if (vessels === 'chosen') return { which: 'chosen', vesselIds: [...vesselIds] };
  if (vessels === 'under_scheme') return { which: 'under_scheme', scheme: scheme as Schemas['SchemeCode'] };
  return { which: 'all' };
}
