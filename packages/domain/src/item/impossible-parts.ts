/** The parts of a fact that only go with certain kinds of fact, and what they must be. */
import type { Fact } from './fact.ts';
import type { FactProblem } from './fact-problems.ts';
import { isPlate } from './facts-on-record.ts';

export function impossibleParts(fact: Fact): readonly FactProblem[] {
  return [...untilProblems(fact), ...readingProblems(fact), ...readOnProblems(fact)];
}

function untilProblems({ fact, outcome, until, on }: Fact): FactProblem[] {
  const pointer = '/until';
  if (until === undefined)
    return fact === 'extended' ? [{ pointer, detail: 'An extension needs the last day that it covers.' }] : [];
  const putRight = (fact === 'inspected' || fact === 'tested') && outcome !== 'passed';
  if (fact !== 'extended' && !putRight)
    return [{ pointer, detail: 'Only an extension, or an inspection or test that did not pass, runs until a day.' }];
  return until < on.first ? [{ pointer, detail: 'It cannot end before it was given.' }] : [];
}

function readingProblems({ fact, reading }: Fact): FactProblem[] {
  if (fact !== 'meter') return reading ? [{ pointer: '/reading', detail: 'Only a meter fact has a reading.' }] : [];
  if (!reading) return [{ pointer: '/reading', detail: 'A meter fact needs what the meter read.' }];
  if (Number.isFinite(reading.value) && reading.value >= 0) return [];
  return [{ pointer: '/reading/value', detail: 'A meter reads nought or more.' }];
}

function readOnProblems(fact: Fact): FactProblem[] {
  const pointer = '/readOn';
  if (fact.readOn === undefined) return [];
  if (!isPlate(fact))
    return [{ pointer, detail: 'Only a date read on the thing itself has a day on which it was read.' }];
  const early = fact.fact === 'manufactured' && fact.readOn < fact.on.first;
  return early ? [{ pointer, detail: 'It cannot be read before it was made.' }] : [];
}
