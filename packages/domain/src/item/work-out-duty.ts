/** One duty of one rule, worked out for the unit aboard. */
import { addPeriod } from '../calendar/period.ts';
import { dayInWords, periodInWords, periodOf } from '../calendar/words.ts';
import type { Limit, Rule } from '../rule/rule.ts';
import { type Bound, bindEarliest } from './bind.ts';
import { dateOutcome } from './date-outcome.ts';
import { doubtsOfEvidence, doubtsOfFact } from './doubts-of-fact.ts';
import type { Extended } from './extended-until.ts';
import { dayOfFact } from './facts-on-record.ts';
import { type Grounds, type LimitCount, nameMissing } from './limit-count.ts';
import type { CountedLimit, DueOutcome, Explanation, Missing, Obligation, SetAside } from './obligation.ts';
import { outcomeInWords } from './outcome-words.ts';
import { remediesOf } from './remedy.ts';
import type { FactSetAside } from './unit-aboard.ts';
import { capitalised, factInWords } from './words.ts';

/** What is known besides the duty itself: said in the explanation, with no effect on the date. */
export type Remarks = {
  readonly assumed: readonly string[];
  readonly doubts: readonly string[];
  readonly setAside: readonly FactSetAside[];
};

/** `null`: nothing has happened that would make the duty be owed. */
export function workOutDuty(rule: Rule, grounds: Grounds, remarks: Remarks): Obligation | null {
  const bound = bindEarliest(grounds);
  if (bound.kind === 'nothing_owed') return null;
  const { outcome, sentence, said } = conclude(bound, grounds);
  const explained = explain(rule, bound, grounds, remarks);
  return {
    ruleId: rule.id,
    duty: grounds.duty.id,
    scheme: rule.scheme,
    weight: rule.weight,
    action: grounds.duty.action,
    outcome,
    explanation: {
      ...explained,
      sentence,
      setAside: [...explained.setAside, ...said.setAside.map(asSetAside)],
      assumed: [...explained.assumed, ...said.assumed],
      doubts: [...explained.doubts, ...said.doubts],
    },
  };
}

const NO_EXTENSION: Pick<Extended, 'assumed' | 'doubts' | 'setAside'> = { assumed: [], doubts: [], setAside: [] };

type Owed = Exclude<Bound, { kind: 'nothing_owed' }>;

function conclude(bound: Owed, grounds: Grounds) {
  const { inWords } = grounds.duty;
  switch (bound.kind) {
    case 'unknown': {
      const missing = missingIn(bound.others);
      const outcome: DueOutcome = { kind: 'undated', missing };
      const basis =
        missing.length > 1 ? allMissing(missing, grounds) : (bound.others[0]?.basis ?? 'Nothing is on record');
      return { outcome, sentence: `${basis}. ${inWords}, so the date is not known.`, said: NO_EXTENSION };
    }
    case 'due': {
      const { outcome, said } = dateOutcome(bound, grounds);
      const counted = isPlain(grounds) ? '' : `: here ${bound.binds.limit}`;
      const sentence = `${bound.binds.basis}. ${inWords}${counted}, ${outcomeInWords(outcome, grounds.duty, bound.binds, said)}.`;
      return { outcome, sentence, said };
    }
  }
}

/** Any of them would give a date, so the sentence names them all. */
function allMissing(missing: readonly Missing[], grounds: Grounds): string {
  const whats = missing.map((one) => nameMissing(one, grounds));
  return `${capitalised(whats.slice(0, -1).join(', '))} and ${whats.at(-1)} are not on record`;
}

/** One limit that the clause says in full: which limit bound need not be said. */
function isPlain({ duty }: Grounds): boolean {
  const [limit] = duty.limits;
  const one = duty.limits.length === 1 && !duty.fallback && !duty.cappedBy && !duty.noLaterThan && !duty.begins;
  return one && limit !== undefined && isSaidInFull(limit);
}

function isSaidInFull(limit: Limit): boolean {
  switch (limit.kind) {
    case 'after':
      return limit.plus.kind === 'fixed';
    case 'printed':
    case 'given':
    case 'next_event':
    case 'certificate_expiry':
    case 'given_anniversary':
    case 'running_hours':
    case 'triggered':
    case 'deadline_set':
      return true;
    case 'before_event':
    case 'anniversary':
    case 'one_of_anniversaries':
    case 'once_in_certificate':
      return false;
  }
}

function explain(rule: Rule, bound: Owed, grounds: Grounds, remarks: Remarks): Omit<Explanation, 'sentence'> {
  const binds = bound.kind === 'due' ? bound.binds : null;
  const { last } = grounds;
  return {
    source: rule.source,
    binds: binds && asCounted(binds),
    alsoCounted: [...(binds?.alternatives ?? []), ...bound.others.map(asCounted)],
    setAside: once([...(binds?.setAside ?? []), ...last.setAside, ...remarks.setAside]).map(asSetAside),
    assumed: [...remarks.assumed, ...(binds?.assumed ?? [])],
    doubts: [
      ...(binds?.doubts ?? []),
      ...doubtsOfCounted(binds, grounds),
      ...suspectFrom(grounds),
      ...usedSince(grounds),
      ...remarks.doubts,
    ],
    missing: missingIn(bound.others),
    wouldChangeIt: remediesOf(grounds, bound.kind === 'due' ? bound.on : null),
  };
}

function asCounted({ limit, on, factIds }: LimitCount): CountedLimit {
  return { limit, on, factIds };
}

function asSetAside({ fact, why }: FactSetAside): SetAside {
  return { factId: fact.id, why };
}

/** A fact is set aside for one reason, the first that is said. */
function once(setAside: readonly FactSetAside[]): readonly FactSetAside[] {
  return setAside.filter(({ fact }, at) => setAside.findIndex((other) => other.fact === fact) === at);
}

function missingIn(counts: readonly LimitCount[]): readonly Missing[] {
  const missing = counts.flatMap((count) => count.missing);
  return missing.filter(({ what }, index) => missing.findIndex((other) => other.what === what) === index);
}

/** What is odd about the facts that the date rests on. */
function doubtsOfCounted(binds: LimitCount | null, { facts }: Grounds): readonly string[] {
  return facts
    .filter((fact) => binds?.factIds.includes(fact.id))
    .flatMap((fact) => [...doubtsOfEvidence(fact), ...doubtsOfFact(fact, facts)]);
}

function suspectFrom({ duty, manufactured }: Grounds): string[] {
  if (!duty.suspectFromAge || !manufactured) return [];
  const from = dayInWords(addPeriod(manufactured.first, periodOf(duty.suspectFromAge)));
  return [`From ${from}, at ${periodInWords(duty.suspectFromAge)} of age, it is suspect although still in date.`];
}

/** A flare fired or an extinguisher let off is not what it was, whatever its dates say. */
function usedSince({ duty, facts, last }: Grounds): string[] {
  if (duty.limits.some((limit) => limit.kind === 'triggered' && limit.facts.includes('activated'))) return [];
  const since = last.fact ? dayOfFact(last.fact) : Number.NEGATIVE_INFINITY;
  const used = facts.findLast(
    (fact) => fact.fact === 'activated' && fact.outcome === 'passed' && dayOfFact(fact) >= since,
  );
  return used ? [`${factInWords(used)}, and nothing later shows that it was put right.`] : [];
}
