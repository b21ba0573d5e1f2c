/** What looks odd about a fact although a real record can look like that. It is accepted, and the doubt is shown. */
import { addMonths } from '../calendar/day.ts';
import { recordedDateInWords } from '../calendar/words.ts';
import { dateOnRecord } from './date-on-record.ts';
import type { Fact, FactKind } from './fact.ts';
import { dayOfFact } from './facts-on-record.ts';
import { factInWords } from './words.ts';

/** House figure, no source: nothing in the catalogue is printed to last longer. */
const LONGEST_PRINT_MONTHS = 15 * 12;

/** The doubts on one fact, beside the others of the same unit. */
export function doubtsOfFact(fact: Fact, ofUnit: readonly Fact[]): readonly string[] {
  const others = ofUnit.filter((other) => other.id !== fact.id);
  if (fact.fact === 'printed_expiry') return longPrint(fact, others);
  if (fact.fact === 'manufactured') return others.filter(isPrint).flatMap((print) => longPrint(print, [fact]));
  return WORK.has(fact.fact) ? [...withoutTest(fact), ...beforeFitting(fact, others)] : [];
}

/** A date is worth what it rests on. A meter says what it says, whoever read it. */
export function doubtsOfEvidence(fact: Fact): readonly string[] {
  if (fact.fact === 'meter') return [];
  switch (fact.evidence) {
    case 'owner_statement':
      return [`${factInWords(fact)}: it rests on the owner's word alone.`];
    case 'unknown':
      return [`${factInWords(fact)}: what it rests on is not recorded.`];
    case 'certificate':
    case 'stamped':
    case 'printed':
    case 'record':
      return [];
  }
}

/** Moved, and nothing later shows it aboard. What stands in its place meanwhile is an item of its own. */
export function doubtsOfMove(facts: readonly Fact[]): readonly string[] {
  const moved = facts.findLast((fact) => fact.fact === 'moved' && fact.outcome === 'passed');
  if (!moved || facts.some((fact) => SHOWS_IT_ABOARD.has(fact.fact) && dayOfFact(fact) >= dayOfFact(moved))) return [];
  const where = moved.note ? ` (${moved.note})` : '';
  return [
    `${factInWords(moved)}${where}, and nothing later shows it aboard: what is lent in its place is another item.`,
  ];
}

const SHOWS_IT_ABOARD: ReadonlySet<FactKind> = new Set(['installed', 'inspected', 'replaced']);

const WORK: ReadonlySet<FactKind> = new Set(['inspected', 'serviced', 'tested', 'overhauled']);

function isPrint(fact: Fact): boolean {
  return fact.fact === 'printed_expiry';
}

function withoutTest(fact: Fact): string[] {
  const unsaid = fact.fact === 'tested' && fact.test === undefined;
  return unsaid ? ['It does not say which test it was, so no rule can count it.'] : [];
}

function longPrint(print: Fact, others: readonly Fact[]): string[] {
  const made = dateOnRecord(others, ['manufactured'])?.fact;
  if (!made || print.on.first <= addMonths(made.on.last, LONGEST_PRINT_MONTHS)) return [];
  return [`The date printed on it lies more than 15 years after manufacture ${recordedDateInWords(made.on)}.`];
}

function beforeFitting(act: Fact, others: readonly Fact[]): string[] {
  const fitted = dateOnRecord(others, ['installed', 'replaced'])?.fact;
  if (!fitted || act.on.last >= fitted.on.first) return [];
  return [
    `It is dated before the fitting ${recordedDateInWords(fitted.on)}: right only if it was done on the same unit.`,
  ];
}
