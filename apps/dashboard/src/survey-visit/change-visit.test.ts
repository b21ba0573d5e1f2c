import { describe, expect, it } from 'vitest';
import { visitChangeOf } from './change-visit.tsx';
import type { Visit } from './visit.query.ts';

const VISIT = { water: 'ashore', place: 'Tangle Quay', weather: 'dry', hoursAboard: 3 } as Visit;
const typed = { water: 'ashore', place: 'Tangle Quay', client: '', instructions: '', weather: 'dry', hoursAboard: '3' };

describe('a change of what is known of a visit', () => {
  it('is only what differs; what was taken out is taken away', () => {
    expect(visitChangeOf(typed, VISIT)).toEqual({});
    expect(visitChangeOf({ ...typed, weather: ' ', hoursAboard: '4,5', client: ' J. Dow ' }, VISIT)).toEqual({
      weather: null,
      hoursAboard: 4.5,
      client: 'J. Dow',
    });
  });

  it('is none where the hours are no number', () => {
    expect(visitChangeOf({ ...typed, hoursAboard: 'all day' }, VISIT)).toBeNull();
  });
});
