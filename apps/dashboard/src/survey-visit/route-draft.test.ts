import { describe, expect, it } from 'vitest';
import { added, moved, renamed } from './route-draft.ts';

const ROUTE = [
  { zone: 'papers', name: 'Papers' },
  { zone: 'deck', name: 'Deck' },
  { zone: 'engine', name: 'Engine' },
];
const zones = (route: readonly { zone: string }[]) => route.map(({ zone }) => zone);

describe('a route while it is changed', () => {
  it('moves a place by one, and none past its ends', () => {
    expect(zones(moved(ROUTE, 2, -1))).toEqual(['papers', 'engine', 'deck']);
    expect(zones(moved(ROUTE, 0, 1))).toEqual(['deck', 'papers', 'engine']);
    expect(moved(ROUTE, 0, -1)).toEqual(ROUTE);
    expect(moved(ROUTE, 2, 1)).toEqual(ROUTE);
  });

  it('renames a place without making it another one', () => {
    expect(renamed(ROUTE, 1, 'Deck and hatches')[1]).toEqual({ zone: 'deck', name: 'Deck and hatches' });
  });

  it('adds a place of one’s own under a code from its name, once', () => {
    expect(added(ROUTE, ' Lærling’s locker ')?.at(-1)).toEqual({ zone: 'l_rling_s_locker', name: 'Lærling’s locker' });
    expect(added(ROUTE, 'Deck')).toBeNull();
    expect(added(ROUTE, '7 !')).toBeNull();
  });
});
