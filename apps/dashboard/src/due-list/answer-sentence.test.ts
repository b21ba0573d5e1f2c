import { expect, test } from 'vitest';
import { overdueSentence, unknownSentence } from './answer-sentence.ts';
import type { StandingCounts, WeightCounts } from './counts.ts';

test('law and advice are counted apart', () => {
  const counts = standing({ overdue: { law: 6, certificate: 3, maker: 4, common_practice: 10 } });
  expect(overdueSentence(counts, 7)).toBe(
    'Twenty-three things on seven vessels: nine by law or certificate and fourteen by advice.',
  );
});

test('an insurer’s terms are neither law nor advice', () => {
  const counts = standing({ overdue: { law: 1, insurer: 2, own: 1 } });
  expect(overdueSentence(counts, 1)).toBe(
    'Four things on one vessel: one by law or certificate, two by an insurer’s terms and one by advice.',
  );
});

test('one kind of weight is not counted twice', () => {
  expect(overdueSentence(standing({ overdue: { law: 1 } }), 1)).toBe('One thing on one vessel: by law or certificate.');
  expect(overdueSentence(standing({ overdue: { own: 3 } }), 2)).toBe('Three things on two vessels: all by advice.');
});

test('nothing out of date is never called safe', () => {
  expect(overdueSentence(standing({}), 0)).toContain('not the same as safe');
});

test('things without a date are told beside what is overdue', () => {
  expect(unknownSentence(standing({ overdue: { law: 1 }, unknown: { law: 11 } }))).toBe(
    'Eleven more have no date to go by.',
  );
  expect(unknownSentence(standing({ unknown: { maker: 1 } }))).toBe('One has no date to go by.');
  expect(unknownSentence(standing({}))).toBe('');
});

function standing(some: { [Standing in keyof StandingCounts]?: Partial<WeightCounts> }): StandingCounts {
  const none = { law: 0, certificate: 0, insurer: 0, maker: 0, common_practice: 0, own: 0 };
  const of = (standing: keyof StandingCounts) => ({ ...none, ...some[standing] });
  return {
    overdue: of('overdue'),
    due: of('due'),
    in_date: of('in_date'),
    unknown: of('unknown'),
    suspended: of('suspended'),
  };
}
