import { describe, expect, it } from 'vitest';
import { formatDay } from '../calendar/day.ts';
import { day, fact } from '../item/facts.test-support.ts';
import type { ItemKindId } from '../item/item-kind.ts';
import type { Cut } from '../item/unit-aboard.ts';
import { workOutObligations } from '../item/work-out-obligations.ts';
import { versionOf, WEEKLY_LOOK } from './own-rule.test-support.ts';
import type { OwnRuleDefinition, OwnRuleVersion } from './own-rule.ts';
import type { SchemeId } from './scheme.ts';

const LOOKED = fact('inspected', '2026-03-10');
const KIND: ItemKindId = 'portable_extinguisher_foam';
const HER = { situations: [], events: [], schemes: [] as SchemeId[], id: 'teal' };

function owed(ownRules: readonly OwnRuleVersion[], cut: Cut = {}, facts = [LOOKED], her = HER) {
  return workOutObligations({ kind: KIND, attributes: {}, facts }, { ...her, ownRules }, cut).filter(
    ({ scheme }) => scheme === 'own',
  );
}

function due(...asked: Parameters<typeof owed>): (string | null)[] {
  return owed(...asked).map(({ outcome }) => (outcome.kind === 'dated' ? formatDay(outcome.dueOn) : null));
}

describe('a rule of one’s own', () => {
  it('gives a date with the same reasoning as a published one, under its own weight', () => {
    const [look] = owed([versionOf(WEEKLY_LOOK)]);

    expect(look).toMatchObject({ ruleId: 'weekly', duty: 'duty', scheme: 'own', weight: 'own' });
    expect(look?.explanation.sentence).toBe(
      'Inspected on 10 March 2026. By the organisation’s own rule, set by Anna Berg from 1 March 2026, the limit is 7 days after the last inspection, so it is due by 17 March 2026.',
    );
    expect(look?.explanation.source).toEqual({
      ...{ publication: 'Standing orders, no. 4', clause: null, address: null, status: 'second_hand' },
    });
    expect(look?.explanation.binds).toMatchObject({ factIds: [LOOKED.id] });
    expect(look?.explanation.wouldChangeIt).toEqual([{ act: 'inspected', by: [], plus: 'P7D' }]);
  });

  it('says what is missing where the thing was never looked at', () => {
    const [look] = owed([versionOf(WEEKLY_LOOK)], {}, []);

    expect(look?.outcome.kind).toBe('undated');
    expect(look?.explanation.missing).toMatchObject([{ what: 'the last inspection' }]);
  });

  it('counts the first time from fitting where it says so, and the window around the day', () => {
    const first: OwnRuleDefinition = {
      ...WEEKLY_LOOK,
      first: { from: 'installed', plus: 'P1M' },
      window: { before: 'P2D', after: 'P3D' },
    };
    const [look] = owed([versionOf(first)], {}, [fact('installed', '2026-02-28')]);

    expect(look?.outcome).toMatchObject({ dueOn: day('2026-03-28'), overdueAfter: day('2026-03-31') });
    expect(look?.explanation.assumed).toEqual([expect.stringContaining('counted from fitting')]);
  });

  it('counts running hours, and the earliest of its limits binds', () => {
    const oil: OwnRuleDefinition = {
      ...WEEKLY_LOOK,
      kinds: ['engine'],
      limits: [
        { kind: 'interval', from: 'last_done', plus: 'P1Y' },
        { kind: 'running_hours', hours: 100 },
      ],
      resets: [{ act: 'serviced', tests: ['oil_and_filter'], by: [] }],
    };
    const meter = (on: string, value: number) => fact('meter', on, { reading: { value, unit: 'hours' } });
    const facts = [
      fact('serviced', '2026-01-01', { test: 'oil_and_filter' }),
      meter('2026-01-01', 0),
      meter('2026-02-20', 50),
    ];
    const found = workOutObligations(
      { kind: 'engine', attributes: {}, facts },
      { ...HER, ownRules: [versionOf(oil)] },
    ).find(({ scheme }) => scheme === 'own');

    expect(found?.outcome).toMatchObject({ dueOn: day('2026-04-11') });
    expect(found?.explanation.sentence).toContain(
      'the limit is the earliest of: 1 year after the last oil and filter change; 100 running hours after the last oil and filter change',
    );
  });

  it('bears on her kinds only, and on the vessels that it names', () => {
    const on = (vessels: OwnRuleDefinition['vessels'], schemes: SchemeId[] = []) =>
      due([versionOf({ ...WEEKLY_LOOK, vessels })], {}, [LOOKED], { ...HER, schemes }).length;

    expect(due([versionOf({ ...WEEKLY_LOOK, kinds: ['gas_hose'] })])).toEqual([]);
    expect(on({ which: 'chosen', vesselIds: ['teal'] })).toBe(1);
    expect(on({ which: 'chosen', vesselIds: ['widgeon'] })).toBe(0);
    expect(on({ which: 'under_scheme', scheme: 'solas' })).toBe(0);
    expect(on({ which: 'under_scheme', scheme: 'solas' }, ['solas'])).toBe(1);
  });
});

describe('versions of a rule of one’s own', () => {
  const monthly = { ...WEEKLY_LOOK, limits: [{ kind: 'interval', from: 'last_done', plus: 'P1M' }] } as const;
  const both = [
    versionOf(WEEKLY_LOOK),
    versionOf(monthly, { number: 2, takesEffectOn: '2026-06-01', recordedAt: '2026-05-20T08:00:00Z' }),
  ];

  it('count from the day on which each takes effect', () => {
    const at = (asOf: string) => due(both, { asOf: day(asOf) });

    expect(at('2026-02-28')).toEqual([]);
    expect(at('2026-05-31')).toEqual(['2026-03-17']);
    expect(at('2026-06-01')).toEqual(['2026-04-10']);
  });

  it('count only once they are known', () => {
    const at = (knownAt: string) => due(both, { asOf: day('2026-07-01'), knownAt });

    expect(at('2026-02-01T00:00:00Z')).toEqual([]);
    expect(at('2026-05-19T00:00:00Z')).toEqual(['2026-03-17']);
    expect(at('2026-05-20T08:00:00Z')).toEqual(['2026-04-10']);
  });

  it('that were recorded later stand in for what was planned before, from their day on', () => {
    const sooner = versionOf(
      { ...monthly, limits: [{ kind: 'interval', from: 'last_done', plus: 'P14D' }] },
      { number: 3, takesEffectOn: '2026-05-25', recordedAt: '2026-05-21T08:00:00Z' },
    );
    const at = (asOf: string) => due([...both, sooner], { asOf: day(asOf) });

    expect(at('2026-05-24')).toEqual(['2026-03-17']);
    expect(at('2026-05-25')).toEqual(['2026-03-24']);
    expect(at('2026-07-01')).toEqual(['2026-03-24']);
  });

  it('end it from a day on, and what applied before stays', () => {
    const ended = [...both, versionOf(null, { number: 3, takesEffectOn: '2026-09-01' })];

    expect(due(ended, { asOf: day('2026-08-31') })).toEqual(['2026-04-10']);
    expect(due(ended, { asOf: day('2026-09-01') })).toEqual([]);
  });
});
