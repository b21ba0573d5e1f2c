/** Words of who works here. */
import type { Role } from '../organisation/may.ts';

/** A role by its own name, and what it comes to. */
export const roleNames: Record<Role, string> = {
  owner: 'owner',
  manager: 'manager',
  surveyor: 'surveyor',
  yard: 'yard',
  viewer: 'viewer',
};
export const roleMeans: Record<Role, string> = {
  owner: 'everything, and who works here',
  manager: 'keeps the register, the rules and the people',
  surveyor: 'records what was seen, tested and done',
  yard: 'records what was done',
  viewer: 'looks, and changes nothing',
};

export const people = {
  title: 'Who works here',
  answer: (count: number) => (count === 1 ? 'One person.' : `${count} people.`),
  waiting: 'Reading who works here …',
  failed: 'Who works here could not be read',
  caption: 'People, what they may do, and for which vessels',
  columns: { name: 'Name', role: 'May', vessels: 'For', since: 'Since' },
  former: 'a former member',
  you: 'you',
  whole: 'the whole fleet',
  unknownVessel: 'a vessel that is not shown to you',
  change: 'Change',
  changeOf: (name: string) => `Change what ${name} may do`,
  role: 'Role',
  narrow: 'For which vessels',
  all: 'The whole fleet, with vessels that come later',
  only: 'Only these',
  save: 'Save',
  leaveAsIs: 'Leave it as it is',
  changed: (name: string) => `What ${name} may do is changed. It counts from now on.`,
  remove: 'Remove',
  removeHow: (name: string) => `${name} sees nothing of this organisation from now on. What they recorded stays.`,
  reason: 'Why',
  removed: (name: string) => `${name} is removed.`,
  invite: 'Invite somebody',
  inviteHow: 'A letter with a link goes to the address. It works once, for seven days, for that address alone.',
  send: 'Send the invitation',
  sent: (email: string) => `A letter is on its way to ${email}.`,
  notSent: (email: string) =>
    `The invitation for ${email} is made, but the letter could not be sent. Withdraw it and try again.`,
  pending: 'Invited, not come yet',
  until: (instant: string) => `open until ${instant}`,
  over: 'its week is over',
  withdraw: 'Withdraw',
  withdrawOf: (email: string) => `Withdraw the invitation to ${email}`,
  withdrawn: 'The invitation is withdrawn.',
};
