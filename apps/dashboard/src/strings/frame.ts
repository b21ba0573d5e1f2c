/** Words of the frame around every page. */
import type { Role } from '../organisation/may.ts';

/** Whoever has that role, as in "the owner and the managers". */
export const roleWords: Record<Role, string> = {
  owner: 'the owner',
  manager: 'the managers',
  surveyor: 'the surveyors',
  yard: 'the yard',
  viewer: 'whoever only looks',
};

export const strings = {
  skip: 'Skip to the page',
  navigation: 'Pages',
  pages: {
    fleet: 'Fleet',
    due: 'Out of date',
    findings: 'Findings',
    visits: 'Visits',
    vessels: 'Vessels',
    notices: 'Notices',
    rules: 'Rules',
    season: 'Season',
    people: 'People',
    keys: 'Keys',
    shares: 'Shown to outsiders',
    changes: 'Changes',
    account: 'Your account',
  },
  morePages: 'More',
  lessPages: 'Less',
  countBeforeUse: (count: number) => `${count} before use`,
  countOutOfDate: (count: number) => `${count} out of date`,
  printed: (instant: string) => `Printed ${instant}.`,
  factsKnownTo: (instant: string) => `Facts known to ${instant}.`,
  caution: 'This keeps dates and records. It does not make a vessel safe.',
  theme: { legend: 'Day or night', device: 'as the device', day: 'day', night: 'night' },
  tryAgain: 'Try again',
  unreachable: 'The program does not answer. It may have been stopped, or the network is down.',
  offline: {
    what: 'No network.',
    seen: (instant: string) =>
      `What you see was read at ${instant}. Nothing new is read, and nothing can be recorded, until it is back.`,
    notRead: 'Not read: there is no network. It is read as soon as there is.',
  },
  silent: {
    what: 'The program does not answer.',
    seen: (instant: string) => `What you see was read at ${instant}, and may have changed since.`,
  },
  forbidden: {
    title: 'This page is not for your role',
    why: (roles: string) => `It is for ${roles}. Ask one of them, or ask whoever keeps the organisation for that role.`,
  },
  notHere: 'Nothing is kept under this address',
  notHereWhy: 'The address may be mistyped, or what it named belongs to another organisation.',
  toFleet: 'Who needs somebody first',
  fault: 'This page broke',
  faultWhy: 'That is a fault in the program, not in your records. Nothing recorded is lost.',
};
