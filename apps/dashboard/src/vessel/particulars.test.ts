import { expect, test } from 'vitest';
import { particularsInFull, particularsInShort, situationOn } from './particulars.ts';

const vessel = {
  id: 'v',
  name: 'Kittiwake',
  type: 'sloop',
  lengthOverallM: 10.4,
  hullMaterial: 'GRP',
  builtYear: 2009,
  homePort: 'Skerry',
  schemes: [],
  timeZone: 'Europe/London',
  createdAt: '2026-01-01T00:00:00Z',
  version: 1,
};

test('a vessel is told in a few words, and what is not known is left out', () => {
  expect(particularsInShort(vessel)).toBe('10.4 m sloop');
  expect(particularsInShort({})).toBe('');
  expect(particularsInFull(vessel, situation('2026-10-18'))).toBe(
    '10.4 m sloop, GRP, 2009 · Skerry · ashore, laid up since 18 Oct 2026',
  );
});

test('the situation on a day is the latest that began by then', () => {
  const all = [situation('2027-03-20'), situation('2025-10-01'), situation('2026-10-18')];
  expect(situationOn(all, '2026-11-25')?.from).toBe('2026-10-18');
  expect(situationOn(all, '2024-01-01')).toBeUndefined();
});

function situation(from: string) {
  return {
    id: from,
    from,
    place: 'ashore' as const,
    use: 'laid_up' as const,
    dismantled: false,
    underRepair: false,
    recordedAt: '2026-10-18T08:00:00Z',
  };
}
