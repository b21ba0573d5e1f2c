/**
 * Whether a new fact can be true beside what is already on record. Some statements cannot: they are
 * refused. Others only look odd, as real records do: they are accepted, and the doubt is shown.
 */
import type { Day } from '../calendar/day.ts';
import { addMonths, dayOf } from '../calendar/day.ts';
import { dayInWords, recordedDateInWords } from '../calendar/words.ts';
import { RULES } from '../rule/rules.ts';
import { doubtsOfChecks } from './check-stamp.ts';
import { doubtsOfFact } from './doubts-of-fact.ts';
import type { Fact } from './fact.ts';
import { factsOnRecord, isPlate } from './facts-on-record.ts';
import { impossibleParts } from './impossible-parts.ts';
import { unitsOf } from './units.ts';
import { actInWords, capitalised } from './words.ts';
import type { ItemHistory } from './work-out-obligations.ts';

/** `pointer` is the field (RFC 6901) in the fact as it was sent. */
export type FactProblem = { readonly pointer: string; readonly detail: string };

/** Any problem: the fact is refused. Doubts alone: it is accepted and they are shown. */
export type FactJudgement = { readonly problems: readonly FactProblem[]; readonly doubts: readonly string[] };

/** `history` is without the new fact; `today` is the day at the vessel's place. */
export function factProblems(fact: Fact, history: ItemHistory, today: Day): FactJudgement {
  const correction = impossibleCorrection(fact, history.facts);
  if (fact.retracts) return { problems: correction, doubts: [] };
  const problems = [...impossibleDays(fact, today), ...impossibleParts(fact), ...correction];
  if (problems.length > 0) return { problems, doubts: [] };
  const ofUnit = sameUnit(fact, history.facts);
  const clash = clashWithManufacture(fact, ofUnit);
  return clash ? { problems: [clash], doubts: [] } : { problems: [], doubts: doubtsBeside(fact, ofUnit, history) };
}

const EARLIEST = dayOf(1900, 1, 1);
/** House figure, no source: further ahead than anything that is printed or permitted. */
const FURTHEST_MONTHS = 50 * 12;

function impossibleDays(fact: Fact, today: Day): FactProblem[] {
  const ahead = fact.fact === 'printed_expiry' ? addMonths(today, FURTHEST_MONTHS) : today;
  const days: [string, Day | undefined, Day][] = [
    ['/on', fact.on.first, ahead],
    ['/readOn', fact.readOn, today],
    ['/until', fact.until, addMonths(today, FURTHEST_MONTHS)],
  ];
  return days.flatMap(([pointer, day, latest]) => (day === undefined ? [] : outside(pointer, day, latest)));
}

function outside(pointer: string, day: Day, latest: Day): FactProblem[] {
  if (day < EARLIEST) return [{ pointer, detail: `${dayInWords(day)} is before 1900.` }];
  if (day > latest)
    return [{ pointer, detail: `${dayInWords(day)} is too far ahead: no later than ${dayInWords(latest)}.` }];
  return [];
}

function impossibleCorrection(fact: Fact, facts: readonly Fact[]): FactProblem[] {
  if (fact.corrects === undefined) {
    return fact.retracts
      ? [{ pointer: '/retracts', detail: 'Only a correction can retract: name the fact in corrects.' }]
      : [];
  }
  const pointer = '/corrects';
  const wrong = facts.find((other) => other.id === fact.corrects);
  if (!wrong) return [{ pointer, detail: 'No such fact of this item.' }];
  if (wrong.retracts) return [{ pointer, detail: 'That one retracts another: state what is true as a new fact.' }];
  if (fact.retracts && wrong.fact !== fact.fact)
    return [{ pointer: '/fact', detail: `It retracts ${wrong.fact}: repeat that.` }];
  const gone = facts.some((other) => other.corrects === fact.corrects);
  return gone
    ? [{ pointer, detail: 'That fact has been struck out already; correct the one that stands in its place.' }]
    : [];
}

/** The other facts that hold of the unit that the new fact speaks of. */
function sameUnit(fact: Fact, facts: readonly Fact[]): readonly Fact[] {
  const record = factsOnRecord([...facts, fact]);
  const { unitOf } = unitsOf(record);
  return record.held.filter((other) => other !== fact && unitOf(other) === unitOf(fact));
}

/** Nothing was done to a thing, and nothing on it runs out, before it was made. */
function clashWithManufacture(fact: Fact, ofUnit: readonly Fact[]): FactProblem | null {
  const made = fact.fact === 'manufactured' ? fact : ofUnit.find((other) => other.fact === 'manufactured');
  const others = fact.fact === 'manufactured' ? ofUnit : [fact];
  const early = made && others.find((other) => other.fact !== 'manufactured' && other.on.last < made.on.first);
  if (!made || !early) return null;
  const what = `${capitalised(actInWords(early.fact, early.test))} ${recordedDateInWords(early.on)}`;
  const detail = `${what} would be before manufacture ${recordedDateInWords(made.on)}. If it is another unit, record the replacement first.`;
  return { pointer: '/on', detail };
}

function doubtsBeside(fact: Fact, ofUnit: readonly Fact[], { kind }: ItemHistory): readonly string[] {
  const stamps = RULES.filter((rule) => isPlate(fact) && rule.kinds.includes(kind)).flatMap((rule) =>
    rule.duties.length === 0 && bothPlates(fact, ofUnit) ? doubtsOfChecks(rule, [...ofUnit, fact]) : [],
  );
  return [
    ...doubtsOfFact(fact, ofUnit),
    ...stamps,
    ...sameAgain(fact, ofUnit),
    ...meterBack(fact, ofUnit),
    ...afterEnd(fact, ofUnit),
  ];
}

/** A check that only misses its other plate is no doubt on this one. */
function bothPlates(fact: Fact, ofUnit: readonly Fact[]): boolean {
  return ofUnit.some((other) => isPlate(other) && other.fact !== fact.fact);
}

function sameAgain(fact: Fact, ofUnit: readonly Fact[]): string[] {
  const same = ofUnit.some(
    (other) =>
      other.fact === fact.fact &&
      other.on.text === fact.on.text &&
      other.test === fact.test &&
      other.outcome === fact.outcome,
  );
  return same && fact.fact !== 'meter' ? ['The same is on record already.'] : [];
}

function meterBack({ reading, on }: Fact, ofUnit: readonly Fact[]): string[] {
  if (!reading) return [];
  const more = ofUnit.some(
    (other) => other.on.first < on.first && other.reading?.unit === reading.unit && other.reading.value > reading.value,
  );
  return more ? ['The meter reads less than it did before: was it changed, or misread?'] : [];
}

function afterEnd(fact: Fact, ofUnit: readonly Fact[]): string[] {
  const withdrawn = ofUnit.find((other) => other.fact === 'withdrawn' && other.on.last < fact.on.first);
  if (!withdrawn || fact.fact === 'withdrawn' || isPlate(fact)) return [];
  return [`It is dated after the withdrawal ${recordedDateInWords(withdrawn.on)}.`];
}
