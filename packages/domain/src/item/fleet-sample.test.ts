import { describe, expect, it } from 'vitest';
import { formatDay } from '../calendar/day.ts';
import type { Fact } from './fact.ts';
import { day, fact } from './facts.test-support.ts';
import { cylinderSamples, dischargeSamples, type Sampled, type Samples } from './fleet-sample.ts';

const unit = (itemId: string, kind: Sampled['kind'], made: string | null, ...facts: Fact[]): Sampled => ({
  itemId,
  kind,
  made: made === null ? null : day(made),
  facts,
});
const told = ({ samples }: Samples) =>
  samples.map(({ group, howMany, by, among }) => [group, howMany, formatDay(by), among.join(' ')]);

describe('portable extinguishers, one of each type and year', () => {
  const powder = (id: string, made: string, ...facts: Fact[]) =>
    unit(id, 'portable_extinguisher_dry_powder', made, ...facts);
  const discharged = (on: string) => fact('tested', on, { test: 'discharge' });

  it('are discharged five years after the last of the group, the longest without first', () => {
    const fleet = [powder('a', '2019-03-01', discharged('2024-05-02')), powder('b', '2019-11-01')];
    expect(told(dischargeSamples(fleet))).toEqual([['portable_extinguisher_dry_powder 2019', 1, '2029-05-02', 'b a']]);
  });

  it('are apart by type and by year, the first due first', () => {
    const foam = unit('f', 'portable_extinguisher_foam', '2018-06-01');
    expect(told(dischargeSamples([powder('a', '2019-03-01'), powder('c', '2020-01-15'), foam]))).toEqual([
      ['portable_extinguisher_foam 2018', 1, '2023-06-01', 'f'],
      ['portable_extinguisher_dry_powder 2019', 1, '2024-03-01', 'a'],
      ['portable_extinguisher_dry_powder 2020', 1, '2025-01-15', 'c'],
    ]);
  });

  it('are not answered by a discharge that failed, or by a service', () => {
    const failed = fact('tested', '2024-05-02', { test: 'discharge', outcome: 'failed' });
    expect(told(dischargeSamples([powder('a', '2019-03-01', failed, fact('serviced', '2024-06-01'))]))).toEqual([
      ['portable_extinguisher_dry_powder 2019', 1, '2024-03-01', 'a'],
    ]);
  });

  it('of unknown manufacture are told apart: nothing can be said of them', () => {
    const fleet = [powder('a', '2019-03-01'), unit('x', 'portable_extinguisher_dry_powder', null)];
    expect(dischargeSamples(fleet).unknown).toEqual(['x']);
    expect(dischargeSamples(fleet).samples).toHaveLength(1);
  });
});

describe('carbon dioxide cylinders of a fixed system', () => {
  const made = '2010-06-01';
  const tested = (on: string, outcome: Fact['outcome'] = 'passed') =>
    fact('tested', on, { id: `${on} ${outcome}`, test: 'hydrostatic', outcome });
  const cylinders = (count: number, ...first: Fact[][]) =>
    Array.from({ length: count }, (_, at) => unit(`c${at}`, 'fixed_co2_system', made, ...(first[at] ?? [])));
  const sample = (all: readonly Sampled[]) =>
    cylinderSamples(all).samples.map(({ howMany, by, among }) => [howMany, formatDay(by), among.length]);

  it.each([
    ['a tenth at ten years', cylinders(10), [1, '2020-06-01', 10]],
    ['a tenth rounded up', cylinders(11), [2, '2020-06-01', 11]],
    ['what is left of the tenth', cylinders(11, [tested('2019-05-01')]), [1, '2020-06-01', 10]],
    ['half where one failed', cylinders(10, [tested('2020-05-01', 'failed')]), [5, '2020-06-01', 10]],
    [
      'all where two failed',
      cylinders(10, [tested('2020-05-01', 'failed')], [tested('2020-05-01', 'failed')]),
      [10, '2020-06-01', 10],
    ],
    ['all by twenty, those tested before ten years too', cylinders(3, [tested('2019-05-01')]), [3, '2030-06-01', 3]],
    ['all others by twenty', cylinders(3, [tested('2021-05-01')]), [2, '2030-06-01', 2]],
  ])('%s', (_, all, expected) => {
    expect(sample(all)).toEqual([expected]);
  });

  it('all again ten years on, once all are done', () => {
    const all = cylinders(2, [tested('2029-05-01')], [tested('2030-05-01')]);
    expect(sample(all)).toEqual([[2, '2040-06-01', 2]]);
  });
});
