import { describe, expect, it } from 'vitest';
import { type Grant, grantFaults, leavesNoOwner, mayAssign } from './membership.ts';
import { may, PERMISSIONS, permissionsOf, ROLES } from './permission.ts';

describe('what is granted', () => {
  it.each([
    [{ role: 'owner', vesselIds: 'all' }, []],
    [{ role: 'viewer', vesselIds: ['v1'] }, []],
    [{ role: 'viewer', vesselIds: [] }, ['vesselIds']],
    [{ role: 'owner', vesselIds: ['v1'] }, ['vesselIds']],
    [{ role: 'manager', vesselIds: ['v1'] }, ['vesselIds']],
  ] satisfies [Grant, string[]][])('%j has faults at %j', (grant, places) => {
    expect(grantFaults(grant).map(({ at }) => at)).toEqual(places);
  });
});

describe('who may make somebody what', () => {
  it('is any change for an owner', () => {
    for (const before of [...ROLES, null]) expect(mayAssign('owner', before, 'owner')).toBe(true);
  });

  it('is everything but owners for a manager', () => {
    expect(mayAssign('manager', null, 'manager')).toBe(true);
    expect(mayAssign('manager', 'viewer', null)).toBe(true);
    expect(mayAssign('manager', 'owner', 'viewer')).toBe(false);
    expect(mayAssign('manager', 'viewer', 'owner')).toBe(false);
    expect(mayAssign('manager', 'owner', null)).toBe(false);
  });

  it('is nothing for the others', () => {
    for (const role of ['surveyor', 'yard', 'viewer'] as const) expect(mayAssign(role, null, 'viewer')).toBe(false);
  });
});

describe('the last owner', () => {
  it('cannot become something else or nothing', () => {
    expect(leavesNoOwner(['a'], 'a', 'manager')).toBe(true);
    expect(leavesNoOwner(['a'], 'a', null)).toBe(true);
  });

  it('stays owner without harm, and is not the last where there is another', () => {
    expect(leavesNoOwner(['a'], 'a', 'owner')).toBe(false);
    expect(leavesNoOwner(['a', 'b'], 'a', null)).toBe(false);
    expect(leavesNoOwner(['a'], 'b', null)).toBe(false);
  });
});

describe('the table of roles', () => {
  it('lets owners do everything and viewers only read', () => {
    expect(permissionsOf({ role: 'owner' })).toEqual(PERMISSIONS);
    expect(permissionsOf({ role: 'viewer' })).toEqual(['read']);
  });

  it('narrows from owner to viewer: nobody may what the one before may not', () => {
    for (const permission of PERMISSIONS) {
      const allowed = ROLES.map((role) => may(role, permission));
      expect(allowed).toEqual([...allowed].sort((a, b) => Number(b) - Number(a)));
    }
  });
});
