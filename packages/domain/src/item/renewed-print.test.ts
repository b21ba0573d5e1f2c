import { describe, expect, it } from 'vitest';
import { datesOf, day, fact, owedUnder } from './facts.test-support.ts';
import { isOfWhatWasBefore, isOfWhatWasRenewed } from './renewed-print.ts';

const renewal = fact('inspected', '2029-03-10', { test: 'renewal_survey' });
const print = (on: string, readOn?: string) => fact('printed_expiry', on, readOn ? { readOn: day(readOn) } : {});

describe('a print beside a renewal', () => {
  it.each([
    ['that ran out before it', true, print('2029-03-01')],
    ['that ran out soon after it', true, print('2029-05-19')],
    ['that ran out half a year after it', true, print('2029-09-10')],
    ['that runs longer', false, print('2029-09-11')],
    ['that runs longer and was read before it', true, print('2034-05-18', '2029-03-09')],
    ['that runs longer and was read on the day', false, print('2034-05-18', '2029-03-10')],
    ['that ran out soon after it, entered later', true, print('2029-05-19', '2029-06-01')],
  ])('%s belongs to the old one: %s', (_, old, fact) => {
    expect(isOfWhatWasRenewed(fact, renewal)).toBe(old);
  });
});

describe('the date on a battery', () => {
  const serviced = (test?: 'battery') =>
    owedUnder('epirb-min', {
      kind: 'epirb',
      facts: [
        fact('installed', '2026-01-10'),
        fact('serviced', '2026-05-01', { by: 'maker', ...(test && { test }) }),
        print('2026-09-30'),
      ],
    });

  it('counts after a fitting and after a service that changed no battery, however soon it comes', () => {
    expect(datesOf(serviced())).toMatchObject({ dueOn: '2026-09-30' });
  });

  it('no longer counts once the battery was changed', () => {
    expect(datesOf(serviced('battery'))).toMatchObject({ dueOn: '2031-05-01' });
  });
});

describe('a print beside something new', () => {
  it.each([
    ['that ran out by then', true, print('2029-03-10')],
    ['that runs out soon after it', false, print('2029-05-19')],
    ['that was read before it', true, print('2034-05-18', '2029-03-09')],
  ])('%s belongs to what was before: %s', (_, before, fact) => {
    expect(isOfWhatWasBefore(fact, renewal)).toBe(before);
  });
});
