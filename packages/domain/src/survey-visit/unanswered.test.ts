import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nextAfter } from '../finding/due-of-finding.ts';
import { checkOn } from './instrument.ts';
import { matterOfLimitation, matterOfReferral } from './matters.ts';
import { unanswered, type VisitState } from './unanswered.ts';
import { CRAFT, routeOf, ZONES } from './zones.ts';

const STATE: VisitState = {
  route: [
    { zone: 'papers', name: 'Papers' },
    { zone: 'deck', name: 'Deck' },
  ],
  answeredZones: [],
  openFindings: [
    { id: 'f1', zone: 'papers', words: 'No certificate aboard' },
    { id: 'f2', zone: 'sun_deck', words: 'Rail loose' },
  ],
  answeredFindings: [],
  limitations: [{ id: 'l1', zone: 'deck', words: 'Under the teak' }],
  answeredLimitations: [],
};

describe('unanswered', () => {
  it('names every place, finding and limitation in the order of the walk, what lies off it last', () => {
    expect(unanswered(STATE).map(({ what, id }) => `${what} ${id}`)).toEqual([
      'zone papers',
      'finding f1',
      'zone deck',
      'limitation l1',
      'finding f2',
    ]);
  });

  it('is empty exactly when each of them has an answer', () => {
    const some = (ids: readonly string[]) => fc.subarray([...ids]);
    const answers = fc.record({
      answeredZones: some(['papers', 'deck']),
      answeredFindings: some(['f1', 'f2']),
      answeredLimitations: some(['l1']),
    });
    fc.assert(
      fc.property(answers, (given) => {
        const left = unanswered({ ...STATE, ...given }).map(({ id }) => id);
        const said = [...given.answeredZones, ...given.answeredFindings, ...given.answeredLimitations];
        expect([...left, ...said].sort()).toEqual(['deck', 'f1', 'f2', 'l1', 'papers']);
      }),
    );
  });
});

// Common practice, no source: keel to masthead, then inside. Each sort of boat walks the places that it has.
it('every route begins with the papers, keeps the order of the walk, and an open boat has no cabin', () => {
  const order = ZONES.map(({ zone }) => zone);
  for (const craft of CRAFT) {
    const zones = routeOf(craft).map(({ zone }) => zone);
    expect(zones[0]).toBe('papers');
    expect(zones).toEqual(order.filter((zone) => zones.includes(zone)));
  }
  expect(routeOf('open_boat').map(({ zone }) => zone)).not.toContain('accommodation');
  expect(routeOf('motor_boat').map(({ zone }) => zone)).not.toContain('mast_and_rigging');
});

// 46 CFR 176.610 (read, https://omb.report/icr/202112-1625-006/doc/117290500): in dry dock all accessible underwater parts,
// through-hull fittings, appendages, propellers, shafts, bearings and rudders are examined; sea valves and strainers are opened.
it.each(['sailing_yacht', 'motor_boat'] as const)(
  'the route of a %s passes every part that a drydock examination looks at',
  (craft) => {
    const passed = routeOf(craft).map(({ zone }) => zone);
    const EXAMINED = {
      'underwater parts and appendages': 'hull_below_water',
      'propellers, shafts and bearings': 'stern_gear',
      rudders: 'keel_and_rudder',
      'through-hull fittings, sea valves and strainers': 'seacocks',
    };
    for (const [part, zone] of Object.entries(EXAMINED)) expect(passed, part).toContain(zone);
  },
);

it('an instrument is out of check on the day after its next check was due, and nobody knows without a day', () => {
  expect(checkOn({ nextCheckOn: '2026-06-01' }, '2026-06-01')).toBe('in_check');
  expect(checkOn({ nextCheckOn: '2026-06-01' }, '2026-06-02')).toBe('out_of_check');
  expect(checkOn({ nextCheckOn: null }, '2026-06-02')).toBe('unknown');
});

describe('what a visit leaves to be done', () => {
  const limitation = { zone: 'deck', what: 'Under the teak', trade: null, imposedOn: '2026-05-01', liftedOn: null };

  it('waits for the next planned visit after the day it was said, or has no date', () => {
    expect(nextAfter(['2027-01-01', '2026-05-01', '2026-09-01'], '2026-05-01')).toBe('2026-09-01');
    expect(matterOfLimitation(limitation, '2026-09-01')).toMatchObject({ on: '2026-09-01', source: 'limitation' });
    expect(matterOfLimitation(limitation, null)?.on).toBeNull();
  });

  it('is over when somebody has looked, or the specialist has', () => {
    expect(matterOfLimitation({ ...limitation, liftedOn: '2026-06-01' }, null)).toBeNull();
    const referral = { zone: 'deck', what: 'Rig', trade: 'rigger', dueOn: '2026-06-01', responsible: null };
    expect(matterOfReferral({ ...referral, isAnswered: false })).toMatchObject({ on: '2026-06-01', trade: 'rigger' });
    expect(matterOfReferral({ ...referral, isAnswered: true })).toBeNull();
  });
});
