import { describe, expect, it } from 'vitest';
import { day, fact } from './facts.test-support.ts';
import { isOfWhatWasBefore, isOfWhatWasRenewed } from './renewed-print.ts';

const renewal = fact('inspected', '2029-03-10', { test: 'renewal_survey' });
const print = (on: string, readOn?: string) => fact('printed_expiry', on, readOn ? { readOn: day(readOn) } : {});

describe('a print beside a renewal', () => {
  it.each([
    ['that ran out before it', print('2029-03-01'), true],
    ['that ran out soon after it', print('2029-05-19'), true],
    ['that ran out half a year after it', print('2029-09-10'), true],
    ['that runs longer', print('2029-09-11'), false],
    ['that runs longer and was read before it', print('2034-05-18', '2029-03-09'), true],
    ['that runs longer and was read on the day', print('2034-05-18', '2029-03-10'), false],
    ['that ran out soon after it, entered later', print('2029-05-19', '2029-06-01'), true],
  ])('%s belongs to the old one: %s', (_, fact, old) => {
    expect(isOfWhatWasRenewed(fact, renewal)).toBe(old);
  });
});

describe('a print beside something new', () => {
  it.each([
    ['that ran out by then', print('2029-03-10'), true],
    ['that runs out soon after it', print('2029-05-19'), false],
    ['that was read before it', print('2034-05-18', '2029-03-09'), true],
  ])('%s belongs to what was before: %s', (_, fact, before) => {
    expect(isOfWhatWasBefore(fact, renewal)).toBe(before);
  });
});
