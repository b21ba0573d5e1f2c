import { describe, expect, it } from 'vitest';
import type { Fact } from './fact.ts';
import { factProblems } from './fact-problems.ts';
import { day, fact } from './facts.test-support.ts';
import type { ItemKindId } from './item-kind.ts';

const TODAY = day('2026-06-15');
const NEW = { id: 'new', recordedAt: '2026-06-15T10:00:00Z' };

function judge(added: Fact, facts: readonly Fact[] = [], kind: ItemKindId = 'liferaft') {
  return factProblems({ ...added, ...NEW }, { kind, attributes: {}, facts }, TODAY);
}

describe('refused, because it cannot be', () => {
  it.each<[string, Fact, string]>([
    ['a day before 1900', fact('manufactured', '0001-01-01'), '/on'],
    ['an act in the future', fact('serviced', '2026-06-16'), '/on'],
    ['a manufacture in the future', fact('manufactured', '2026-07'), '/on'],
    ['a print absurdly far ahead', fact('printed_expiry', '2099-01'), '/on'],
    ['a plate read in the future', fact('manufactured', '2020-01', { readOn: day('2026-06-16') }), '/readOn'],
    ['a plate read before it was made', fact('manufactured', '2020-01', { readOn: day('2019-06-16') }), '/readOn'],
    ['a service that was "read"', fact('serviced', '2026-01-01', { readOn: day('2026-01-02') }), '/readOn'],
    ['an extension without an end', fact('extended', '2026-06-01'), '/until'],
    ['an extension that ends before it begins', fact('extended', '2026-06-01', { until: day('2026-05-31') }), '/until'],
    ['an extension absurdly long', fact('extended', '2026-06-01', { until: day('2099-05-31') }), '/until'],
    [
      'a survey that passed, with a day to put it right',
      fact('inspected', '2026-06-01', { until: day('2026-07-31') }),
      '/until',
    ],
    [
      'a survey to be put right before it was held',
      fact('inspected', '2026-06-01', { until: day('2026-05-31'), outcome: 'failed' }),
      '/until',
    ],
    ['a service that runs until a day', fact('serviced', '2026-06-01', { until: day('2026-07-31') }), '/until'],
    ['a meter fact without a reading', fact('meter', '2026-06-01'), '/reading'],
    ['a negative reading', fact('meter', '2026-06-01', { reading: { value: -1, unit: 'hours' } }), '/reading/value'],
    ['a service with a reading', fact('serviced', '2026-06-01', { reading: { value: 1, unit: 'hours' } }), '/reading'],
    ['a correction of nothing', fact('serviced', '2026-06-01', { corrects: 'unknown' }), '/corrects'],
  ])('%s', (_, added, pointer) => {
    expect(judge(added)).toEqual({ problems: [{ pointer, detail: expect.stringMatching(/^\S.+\.$/) }], doubts: [] });
  });

  it('every fault at once', () => {
    const added = fact('extended', '2026-07-01', { reading: { value: 1, unit: 'hours' }, corrects: 'unknown' });
    expect(judge(added).problems.map(({ pointer }) => pointer)).toEqual(['/on', '/until', '/reading', '/corrects']);
  });

  it('a correction of what has been struck out already', () => {
    const facts = [
      fact('serviced', '2025-01-01', { id: 'a' }),
      fact('serviced', '2025-01-02', { id: 'b', corrects: 'a' }),
    ];
    expect(judge(fact('serviced', '2025-01-03', { corrects: 'a' }), facts).problems).toMatchObject([
      { pointer: '/corrects' },
    ]);
    expect(judge(fact('serviced', '2025-01-03', { corrects: 'b' }), facts).problems).toEqual([]);
  });

  it('a service before manufacture, whichever of the two comes second', () => {
    const made = fact('manufactured', '2023-05');
    const served = fact('serviced', '2023-04-30');
    expect(judge(served, [made]).problems).toEqual([
      {
        pointer: '/on',
        detail:
          'Service on 30 April 2023 would be before manufacture in May 2023. If it is another unit, record the replacement first.',
      },
    ]);
    expect(judge(made, [served]).problems).toMatchObject([{ pointer: '/on' }]);
  });

  it('a print that runs out before manufacture', () => {
    expect(judge(fact('printed_expiry', '2023-04'), [fact('manufactured', '2023-05')]).problems).toHaveLength(1);
  });
});

describe('accepted without a doubt', () => {
  it.each<[string, Fact, Fact[]]>([
    ['a service known only to this month', fact('serviced', '2026-06'), []],
    ['a service in the month of manufacture', fact('serviced', '2023-05'), [fact('manufactured', '2023-05-20')]],
    [
      'a manufacture earlier than the service of another unit',
      fact('manufactured', '2025-01', { readOn: TODAY }),
      [fact('serviced', '2020-01-01'), fact('replaced', '2025-06-01')],
    ],
    [
      'a correction that takes the place of a wrong manufacture',
      fact('manufactured', '2015-05', { corrects: 'manufactured 2025-05' }),
      [fact('manufactured', '2025-05'), fact('serviced', '2020-01-01')],
    ],
    [
      'a meter that reads more',
      fact('meter', '2026-06-01', { reading: { value: 20, unit: 'hours' } }),
      [fact('meter', '2026-05-01', { reading: { value: 10, unit: 'hours' } })],
    ],
    [
      'an older meter reading, entered late',
      fact('meter', '2026-04-01', { reading: { value: 5, unit: 'hours' } }),
      [fact('meter', '2026-05-01', { reading: { value: 10, unit: 'hours' } })],
    ],
    [
      'a survey that failed, with a day to put it right',
      fact('inspected', '2026-06-01', { until: day('2026-07-31'), outcome: 'failed' }),
      [],
    ],
    ['an extension into the future', fact('extended', '2026-06-01', { until: day('2026-10-01') }), []],
  ])('%s', (_, added, facts) => {
    expect(judge(added, facts)).toEqual({ problems: [], doubts: [] });
  });
});

describe('accepted with a doubt', () => {
  it.each<[string, Fact, Fact[], RegExp]>([
    [
      'a print long after manufacture',
      fact('printed_expiry', '2039-01'),
      [fact('manufactured', '2020-01')],
      /more than 15 years/,
    ],
    [
      'a manufacture long before the print',
      fact('manufactured', '2020-01'),
      [fact('printed_expiry', '2039-01')],
      /more than 15 years/,
    ],
    [
      'a service before the fitting',
      fact('serviced', '2020-01-01'),
      [fact('installed', '2021-01-01')],
      /before the fitting/,
    ],
    ['a test that does not say which', fact('tested', '2026-01-01'), [], /which test/],
    ['the same again', fact('serviced', '2026-01-01'), [fact('serviced', '2026-01-01')], /on record already/],
    [
      'a meter that reads less',
      fact('meter', '2026-06-01', { reading: { value: 5, unit: 'hours' } }),
      [fact('meter', '2026-05-01', { reading: { value: 10, unit: 'hours' } })],
      /reads less/,
    ],
    [
      'a service after the withdrawal',
      fact('serviced', '2026-06-01'),
      [fact('withdrawn', '2026-05-01')],
      /after the withdrawal/,
    ],
  ])('%s', (_, added, facts, doubt) => {
    const { problems, doubts } = judge(added, facts);
    expect(problems).toEqual([]);
    expect(doubts).toEqual([expect.stringMatching(doubt)]);
  });

  it('a flare stamped later than 42 months after manufacture', () => {
    const made = fact('manufactured', '2023-03');
    expect(judge(fact('printed_expiry', '2026-10'), [made], 'hand_flare').doubts).toEqual([
      expect.stringContaining('September 2026'),
    ]);
    expect(judge(fact('printed_expiry', '2026-09'), [made], 'hand_flare').doubts).toEqual([]);
    expect(judge(made, [], 'hand_flare').doubts).toEqual([]);
  });
});

describe('a retraction', () => {
  const wrong = fact('meter', '2026-01-10', { id: 'wrong', reading: { value: 700, unit: 'hours' } });
  const pointers = (added: Fact, facts: readonly Fact[]) =>
    judge(added, facts, 'engine').problems.map(({ pointer }) => pointer);

  it('needs nothing but the fact that it strikes out', () => {
    expect(pointers(fact('meter', '2026-01-10', { corrects: 'wrong', retracts: true }), [wrong])).toEqual([]);
  });

  it('must name a fact of the same kind, and none that retracts itself', () => {
    const never = fact('meter', '2026-01-10', { id: 'never', corrects: 'wrong', retracts: true });
    expect(pointers(fact('meter', '2026-01-10', { retracts: true }), [wrong])).toEqual(['/retracts']);
    expect(pointers(fact('serviced', '2026-01-10', { corrects: 'wrong', retracts: true }), [wrong])).toEqual(['/fact']);
    expect(pointers({ ...wrong, corrects: 'never' }, [wrong, never])).toEqual(['/corrects']);
  });
});
