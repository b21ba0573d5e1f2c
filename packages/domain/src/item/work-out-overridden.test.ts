import { describe, expect, it } from 'vitest';
import { override } from '../rule/override.test-support.ts';
import type { Override } from '../rule/override.ts';
import { datesOf, day, fact } from './facts.test-support.ts';
import type { ItemKindId } from './item-kind.ts';
import { type Cut, type ItemHistory, workOutObligations } from './work-out-obligations.ts';

const SERVICED = fact('serviced', '2025-11-04', { by: 'liferaft_service_station' });
const FITTED = fact('installed', '2024-05-10');
const INSURERS = override({
  ruleId: 'raft-solas',
  duty: 'service',
  period: 'P6M',
  weight: 'insurer',
  reason: 'terms of renewal',
  document: 'Letter of 20 February 2026',
});
const MAKERS = override({ ruleId: 'lpg-hose', duty: 'replacement', period: 'P10Y' });

function under(ruleId: string, kind: ItemKindId, facts: ItemHistory['facts'], overrides: Override[], cut: Cut = {}) {
  const vessel = { schemes: ['solas' as const], situations: [], events: [] };
  return workOutObligations({ kind, attributes: {}, facts, overrides }, vessel, cut).filter(
    (one) => one.ruleId === ruleId,
  );
}

const raft = (overrides: Override[], cut?: Cut) => under('raft-solas', 'liferaft', [SERVICED], overrides, cut);
const hose = (overrides: Override[], cut?: Cut) => under('lpg-hose', 'gas_hose', [FITTED], overrides, cut);

describe('a duty of law under a tighter figure', () => {
  it('stays as published, and the tighter figure stands beside it with its own weight', () => {
    const [published, own, ...more] = raft([INSURERS]);

    expect(published).toEqual(raft([])[0]);
    expect([own?.duty, own?.weight, own && datesOf(own)]).toEqual([
      'service.tightened',
      'insurer',
      { dueOn: '2026-05-04', overdueAfter: '2026-05-04' },
    ]);
    expect(more).toEqual([]);
  });

  it('keeps the law’s withdrawal on the list where the tighter one comes first', () => {
    const made = fact('manufactured', '2020-06');
    const tighter = override({ ruleId: 'fe-us-disp', duty: 'withdrawal', period: 'P4Y', weight: 'own' });
    const vessel = { schemes: ['us_recreational' as const], situations: [], events: [] };
    const item = {
      kind: 'portable_extinguisher_dry_powder_disposable' as const,
      attributes: {},
      facts: [made],
      overrides: [tighter],
    };

    const found = workOutObligations(item, vessel).filter(({ ruleId }) => ruleId === 'fe-us-disp');

    expect(found.map(({ duty, weight }) => [duty, weight])).toEqual([
      ['withdrawal', 'law'],
      ['withdrawal.tightened', 'own'],
    ]);
    expect(found.map((one) => datesOf(one).dueOn)).toEqual(['2032-12-31', '2024-12-31']);
  });

  it('gains nothing from a permission that an authority gave for the published figure', () => {
    const permitted = fact('extended', '2026-05-01', { until: day('2026-08-01'), by: 'marine_inspector' });
    const [, own] = under('raft-solas', 'liferaft', [SERVICED, permitted], [INSURERS]);

    expect(own && datesOf(own)).toEqual({ dueOn: '2026-05-04', overdueAfter: '2026-05-04' });
  });

  it('says who set it, when, why and by which document, with the published figure and its date', () => {
    const [, own] = raft([INSURERS]);

    expect(own?.explanation.sentence).toBe(
      'Serviced on 4 November 2025. By the insurer’s figure the interval is 6 months, so it is due by 4 May 2026. Set by Anna Berg from 1 March 2026: “terms of renewal” (Letter of 20 February 2026). Published (SOLAS, III/20.8.1): An inflatable liferaft is serviced at intervals of not more than 12 months, which leads to 4 November 2026.',
    );
    expect(own?.explanation.alsoCounted).toEqual([
      {
        limit: '12 months after the last service, as published (SOLAS, III/20.8.1)',
        on: day('2026-11-04'),
        factIds: [SERVICED.id],
      },
    ]);
    expect(own?.explanation.source).toEqual({
      publication: 'Letter of 20 February 2026',
      clause: null,
      address: null,
      status: 'second_hand',
    });
    expect(own?.explanation.overrideId).toBe(INSURERS.id);
  });

  it('says what the next service would lead to by the tighter figure', () => {
    const [published, own] = raft([INSURERS]);

    expect([published, own].map((one) => one?.explanation.wouldChangeIt[0]?.plus)).toEqual(['P12M', 'P6M']);
  });

  it('has no tighter date either while nothing is on record', () => {
    const [, own] = under('raft-solas', 'liferaft', [], [INSURERS]);

    expect(own?.outcome.kind).toBe('undated');
    expect(own?.explanation.sentence).toContain('which gives no date here');
  });
});

describe('advice under a figure of one’s own', () => {
  it('gives way to it, in every limit that counts an interval', () => {
    const [own, ...more] = hose([MAKERS]);

    expect([own?.duty, own?.weight, own && datesOf(own)]).toMatchObject([
      'replacement',
      'maker',
      { dueOn: '2034-05-10' },
    ]);
    expect(more).toEqual([]);
    expect(own?.explanation.sentence).toContain('which leads to 10 May 2029');
  });

  it('still ends with the date printed on the thing where that comes first', () => {
    const printed = fact('printed_expiry', '2027-01');
    const [own] = under('lpg-hose', 'gas_hose', [FITTED, printed], [MAKERS]);

    expect(own && datesOf(own)).toMatchObject({ dueOn: '2027-01-31' });
  });

  it('counts as published before the figure takes effect, and where it was not yet known', () => {
    const before = hose([MAKERS], { asOf: day('2026-02-28') });
    const unknown = hose([MAKERS], { asOf: day('2026-04-01'), knownAt: '2026-02-28T12:00:00Z' });

    expect(before).toEqual(hose([], { asOf: day('2026-02-28') }));
    expect(unknown).toEqual(hose([], { asOf: day('2026-04-01') }));
  });

  it('leaves the other duties and rules as they are', () => {
    const [gas, solas] = [hose([INSURERS]), raft([MAKERS])];

    expect(gas).toEqual(hose([]));
    expect(solas).toEqual(raft([]));
  });
});

it('takes the place of the interval that the duty names first, and of no other length', () => {
  const figure = override({ ruleId: 'hru-disp', duty: 'replacement', period: 'P3Y' });
  const aboard = [fact('installed', '2024-02-10'), fact('manufactured', '2022-06')];
  const [unit] = under('hru-disp', 'hydrostatic_release_disposable', aboard, [figure]);
  expect(unit && datesOf(unit)).toMatchObject({ dueOn: '2026-06-30' });

  const both = override({ ruleId: 'lpg-hose', duty: 'replacement', period: 'P4Y' });
  const [hose] = under(
    'lpg-hose',
    'gas_hose',
    [fact('installed', '2024-02-10'), fact('manufactured', '2023-06')],
    [both],
  );
  expect(hose && datesOf(hose)).toMatchObject({ dueOn: '2027-06-30' });
});
