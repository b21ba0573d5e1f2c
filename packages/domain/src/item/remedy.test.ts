import { describe, expect, it } from 'vitest';
import { formatDay } from '../calendar/day.ts';
import { day, fact, owedUnder } from './facts.test-support.ts';
import { ifDoneOn } from './remedy.ts';

describe('what would move the date', () => {
  it('is the act that resets the clock, by whom, and by how much', () => {
    const { explanation } = owedUnder('raft-solas', { kind: 'liferaft', schemes: ['solas'] });
    expect(explanation.wouldChangeIt).toEqual([
      { act: 'serviced', by: ['liferaft_service_station'], plus: 'P12M' },
      { act: 'extended', by: ['marine_inspector', 'surveyor'], plus: null },
    ]);
  });

  it('leaves the new date to the new print where that decides', () => {
    const { explanation } = owedUnder('pyro-solas', { kind: 'hand_flare', schemes: ['solas'] });
    expect(explanation.wouldChangeIt).toEqual([{ act: 'replaced', by: [], plus: null }]);
  });

  it('counts from the new fitting where only that decides', () => {
    const { explanation } = owedUnder('lpg-reg', { kind: 'gas_regulator' });
    expect(explanation.wouldChangeIt).toEqual([{ act: 'replaced', by: ['gas_engineer'], plus: 'P10Y' }]);
  });

  it('is a withdrawal too, where the thing is past its age', () => {
    const { explanation } = owedUnder('fe-us-disp', {
      kind: 'portable_extinguisher_dry_powder_disposable',
      schemes: ['us_recreational'],
    });
    expect(explanation.wouldChangeIt).toContainEqual({ act: 'withdrawn', by: [], plus: null });
  });

  it('counts beside what only a trigger would hasten, and back from a race too', () => {
    const gas = owedUnder('lpg-test', { kind: 'gas_installation' });
    expect(gas.explanation.wouldChangeIt).toMatchObject([{ act: 'tested', test: 'tightness', plus: 'P1Y' }]);
    const keel = owedUnder('rig-osr', { kind: 'keel_and_rudder', schemes: ['offshore_racing'] });
    expect(keel.explanation.wouldChangeIt).toMatchObject([{ act: 'inspected', plus: 'P24M' }]);
  });

  it('is left open where a certificate, its closing limit or running hours decide too', () => {
    const plusses = ({ explanation }: ReturnType<typeof owedUnder>) =>
      explanation.wouldChangeIt.map(({ plus }) => plus);
    const boat = { kind: 'workboat_certificate', schemes: ['uk_workboat'] } as const;
    expect(plusses(owedUnder('annual-ukwb', boat))).toEqual([null, null, null, null]);
    expect(plusses(owedUnder('cert-ukwb', boat))).toEqual([null]);
    expect(plusses(owedUnder('eng-oil', { kind: 'engine' }))).toEqual([null]);
  });

  it("is not told in figures where the day of the act, the raft's age or an own figure decides as well", () => {
    const plus = (ruleId: string, question: Parameters<typeof owedUnder>[1]) =>
      owedUnder(ruleId, question, ruleId === 'raft-ext30' ? 'service' : undefined).explanation.wouldChangeIt[0]?.plus;
    const season = {
      conventionShip: false,
      seasonMonths: 6,
      operatesOnlyMonthsMeanDailyMinAbove0C: true,
      dryStoredOffSeason: true,
      extendedInterval: false,
    };
    const made = [fact('manufactured', '2015-06-20')];
    expect(plus('raft-nap', { kind: 'liferaft', schemes: ['solas'], facts: made })).toBeNull();
    expect(
      plus('raft-ext30', { kind: 'liferaft', schemes: ['solas'], facts: made, attributes: { extendedInterval: true } }),
    ).toBeNull();
    expect(
      plus('raft-ca', { kind: 'liferaft', schemes: ['canada_lifesaving'], facts: made, attributes: season }),
    ).toBeNull();
    expect(
      plus('raft-ca', {
        kind: 'liferaft',
        schemes: ['canada_lifesaving'],
        facts: made,
        attributes: { ...season, seasonMonths: 9 },
      }),
    ).toBe('P1Y');
    expect(plus('fe-hydro-nfpa', { kind: 'portable_extinguisher_dry_powder', schemes: ['nfpa10'] })).toBe('P12Y');
  });
});

describe('if it were done on a day', () => {
  it('the new date is counted from that day, clamped', () => {
    const remedy = { act: 'serviced', by: [], plus: 'P1M' } as const;
    expect(formatDay(ifDoneOn(remedy, day('2026-01-31')) ?? day('1970-01-01'))).toBe('2026-02-28');
  });

  it('is not known where the act alone does not decide', () => {
    expect(ifDoneOn({ act: 'replaced', by: [], plus: null }, day('2026-01-31'))).toBeNull();
  });
});

it('inside a window that keeps the day the next is counted from the day, outside it from the act', () => {
  const [service] = owedUnder(
    'lj-uk',
    {
      kind: 'inflatable_lifejacket',
      schemes: ['uk_small_commercial'],
      facts: [fact('serviced', '2025-04-10', { by: 'maker' })],
    },
    'service',
  ).explanation.wouldChangeIt;
  const movesTo = (text: string) => formatDay(ifDoneOn(service as NonNullable<typeof service>, day(text)) as never);
  expect(movesTo('2026-03-09')).toBe('2027-03-09');
  expect(movesTo('2026-03-10')).toBe('2027-04-10');
  expect(movesTo('2026-05-10')).toBe('2027-04-10');
  expect(movesTo('2026-05-11')).toBe('2027-05-11');
});
