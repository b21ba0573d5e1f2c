import { expect, it } from 'vitest';
import { type Share, shareFaults } from './share-link.ts';

const NOW = new Date('2026-11-25T12:00:00Z');
const inDays = (days: number) => new Date(NOW.getTime() + days * 86_400_000);
const share = (vesselIds: Share['vesselIds']): Share => ({
  ...{ label: 'insurer', vesselIds, showsValue: false, purpose: 'look', findingIds: [] },
});

it.each([
  ['all', 30, []],
  [['v1'], 366, []],
  [[], 30, ['vesselIds']],
  ['all', 0, ['expiresAt']],
  ['all', 367, ['expiresAt']],
] satisfies [Share['vesselIds'], number, string[]][])(
  'a link for %j over %i days has faults at %j',
  (ids, days, places) => {
    expect(shareFaults(share(ids), inDays(days), NOW).map(({ at }) => at)).toEqual(places);
  },
);
