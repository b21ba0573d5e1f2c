/** Entries and findings of which only what matters is said. */
import type { Entry, Step } from './entry.ts';
import { type Finding, readFinding } from './finding.ts';
import type { Ground } from './judge-step.ts';

let made = 0;

export function entry(step: Step, on = '2026-06-01', by = 'person:one'): Entry {
  made += 1;
  return { id: String(made).padStart(6, '0'), by, on, recordedAt: `${on}T12:00:00Z`, ...step };
}

export type Found = Step & { readonly step: 'found' };

export function found(more: Partial<Found> = {}, on = '2026-06-01'): Entry {
  return entry(
    {
      step: 'found',
      ...{ zone: 'gas_locker', itemId: null, what: 'Drain blocked', hazard: 'fire_and_gas', trade: null },
      ...{ estimate: null, responsible: null, ruleId: null, limit: null, urgency: 'within_weeks', urgentBy: null },
      ...{ visitId: null, words: null, evidence: [] },
      ...more,
    },
    on,
  );
}

const LOOKED = [{ kind: 'looked', words: 'clear, and poured through', evidenceId: null }] as const;

export const STEPS = {
  propose: { step: 'proposed', work: 'Clear the drain', trade: null, estimate: null },
  plan: { step: 'planned', work: null, forDay: null, trade: null, responsible: null },
  begin: { step: 'begun', words: null },
  reportDone: {
    step: 'reported_done',
    work: 'Drain cleared',
    doneOn: '2026-06-01',
    doneBy: null,
    evidence: [],
    facts: [],
  },
  sendBack: { step: 'sent_back', reason: 'still slow' },
  verify: { step: 'verified', words: null, evidence: LOOKED, independent: true },
  defer: { step: 'deferred', until: '2026-09-01', reviewOn: '2026-09-01', responsible: 'Tomas Reef', reason: 'parts' },
  accept: { step: 'accepted', reviewOn: '2026-09-01', responsible: 'Tomas Reef', reason: 'cosmetic' },
  error: { step: 'entered_in_error', reason: 'wrong boat' },
  reopen: { step: 'reopened', reason: 'it is back' },
  merge: { step: 'merged_into', findingId: 'other', reason: 'the same' },
} as const satisfies Record<string, Step>;

export const seen = (what: (Step & { step: 'seen' })['seen'], more: Partial<Step & { step: 'seen' }> = {}): Step => ({
  step: 'seen',
  seen: what,
  said: null,
  visitId: null,
  words: null,
  evidence: what === 'gone' ? LOOKED : [],
  ...more,
});

export const after = (...entries: Entry[]): Finding => readFinding(entries);

export const GROUND: Ground = {
  today: '2026-07-01',
  role: 'manager',
  surveyorAttends: false,
  reviewBy: '2027-07-01',
  ruleLimit: null,
  secondPairOfEyes: true,
};
