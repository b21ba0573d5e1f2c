/** What looks odd about a fact although a real record can look like that. It is accepted, and the doubt is shown. */
import { addMonths } from '../calendar/day.ts';
import { recordedDateInWords } from '../calendar/words.ts';
import { dateOnRecord } from './date-on-record.ts';
import type { Fact, FactKind } from './fact.ts';

/** House figure, no source: nothing in the catalogue is printed to last longer. */
const LONGEST_PRINT_MONTHS = 15 * 12;

/** The doubts on one fact, beside the others of the same unit. */
export function doubtsOfFact(fact: Fact, ofUnit: readonly Fact[]): readonly string[] {
  const others = ofUnit.filter((other) => other.id !== fact.id);
  if (fact.fact === 'printed_expiry') return longPrint(fact, others);
  if (fact.fact === 'manufactured') return others.filter(isPrint).flatMap((print) => longPrint(print, [fact]));
  return WORK.has(fact.fact) ? [...withoutTest(fact), ...beforeFitting(fact, others)] : [];
}

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
