import { describe, expect, it } from 'vitest';
import { heldAgainst, PUBLISHED_LIMITS } from './published-limits.ts';

const locker = (point: string, value: number | null) =>
  heldAgainst({ zone: 'gas_locker', point, measure: 'length', value }).kind;

// The gas annex of a small commercial vessel code, based on ISO 10239 (read, https://www.imorules.com/GUID-7F5B1C78-5970-429E-8910-7B086920D508.html):
// drain at the lowest point, 19 mm or more; outlet 75 mm or more above the rest waterline; drain and vent 500 mm or more from openings.
describe('what is measured at a gas locker', () => {
  it.each([
    ['drain, inside diameter', 19, 'within'],
    ['drain, inside diameter', 18.9, 'outside'],
    ['Drain, inside diameter ', 12, 'outside'],
    ['drain outlet, above the waterline', 75, 'within'],
    ['drain outlet, above the waterline', 74, 'outside'],
    ['drain and vent, from openings', 500, 'within'],
    ['drain and vent, from openings', 499, 'outside'],
  ])('is held against the annex: %s of %d mm is %s', (point, value, kind) => {
    expect(locker(point, value)).toBe(kind);
  });

  it('is held against nothing where it was not measured, or at another point, or otherwise', () => {
    expect(locker('drain, inside diameter', null)).toBe('no_limit');
    expect(locker('lid', 3)).toBe('no_limit');
    const moisture = { zone: 'gas_locker', point: 'drain, inside diameter', measure: 'moisture', value: 3 };
    expect(heldAgainst(moisture).kind).toBe('no_limit');
  });

  it('has its publication and how far that was checked beside every figure', () => {
    for (const { source, inWords, atLeast } of PUBLISHED_LIMITS) {
      expect(inWords).toContain(`${atLeast} mm`);
      expect(source.status).toBe('read');
      expect(source.address).toMatch(/^https:/);
    }
  });
});
