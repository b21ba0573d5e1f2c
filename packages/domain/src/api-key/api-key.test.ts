import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { allows, PERMISSIONS, permissionsOf, ROLES } from '../organisation/permission.ts';
import { type KeyGrant, keyFaults, mayKeep, rightsOf } from './api-key.ts';

const NOW = new Date('2026-11-25T12:00:00Z');
const inDays = (days: number) => new Date(NOW.getTime() + days * 86_400_000);
const key = (more: Partial<KeyGrant> = {}): KeyGrant => ({
  role: 'surveyor',
  vesselIds: 'all',
  permissions: 'all',
  ...more,
});

describe('a key', () => {
  it.each([
    [key(), 90, []],
    [key({ permissions: ['read', 'record_facts'] }), 366, []],
    [key({ permissions: ['read', 'keep_rules'] }), 90, ['permissions']],
    [key({ permissions: ['record_facts'] }), 90, ['permissions']],
    [key({ role: 'manager', vesselIds: ['v1'] }), 90, ['vesselIds']],
    [key(), 0, ['expiresAt']],
    [key(), 367, ['expiresAt']],
  ] satisfies [KeyGrant, number, string[]][])('%j for %i days has faults at %j', (grant, days, places) => {
    expect(keyFaults(grant, inDays(days), NOW).map(({ at }) => at)).toEqual(places);
  });

  const anyRights = fc.record({
    role: fc.constantFrom(...ROLES),
    permissions: fc.oneof(fc.constant('all' as const), fc.subarray([...PERMISSIONS])),
  });

  it('never lets its keeper do by it what they may not do themselves', () => {
    fc.assert(
      fc.property(anyRights, anyRights, (keeper, wanted) => {
        const by = rightsOf({ ...keeper, vesselIds: 'all' });
        const made = { ...wanted, vesselIds: 'all' } as const;
        if (mayKeep(by, made))
          for (const permission of permissionsOf(rightsOf(made))) expect(allows(by, permission)).toBe(true);
      }),
    );
  });

  it('is an owner’s to make for every role, a manager’s for every one but an owner', () => {
    for (const role of ROLES) {
      expect(mayKeep({ role: 'owner' }, key({ role }))).toBe(true);
      expect(mayKeep({ role: 'manager' }, key({ role }))).toBe(role !== 'owner');
      expect(mayKeep({ role: 'yard' }, key({ role }))).toBe(false);
    }
  });
});
