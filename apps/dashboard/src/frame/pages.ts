/**
 * Every page that stands in the navigation, in its order. A page adds itself by one entry here; its route stands in
 * `routes.tsx`, its words in `strings/frame.ts`.
 */
import type { LinkProps } from '@tanstack/react-router';
import type { ComponentType } from 'react';
import { OverdueCount } from '../due-list/overdue-count.tsx';
import { BeforeUseCount } from '../finding/before-use-count.tsx';
import type { May } from '../organisation/may.ts';
import { strings } from '../strings/frame.ts';

/** What is done day by day, what is kept, and the house itself: groups stand apart. */
export const GROUPS = ['work', 'records', 'house'] as const;

export type PageEntry = {
  readonly to: NonNullable<LinkProps['to']>;
  readonly words: string;
  readonly group: (typeof GROUPS)[number];
  /** Only for whoever may do this; left out: for everybody. */
  readonly permission?: keyof May;
  /** What waits there, drawn beside the words; it asks for its own number. */
  readonly Count?: ComponentType;
  /** Also under the thumb on a phone, where there is room for three; the others are one tap further. */
  readonly thumb?: true;
};

const { pages } = strings;

export const PAGES: readonly PageEntry[] = [
  { to: '/', words: pages.fleet, group: 'work', thumb: true },
  { to: '/due', words: pages.due, group: 'work', Count: OverdueCount, thumb: true },
  { to: '/findings', words: pages.findings, group: 'work', Count: BeforeUseCount },
  { to: '/visits', words: pages.visits, group: 'work' },
  { to: '/notices', words: pages.notices, group: 'work' },
  { to: '/vessels', words: pages.vessels, group: 'records', thumb: true },
  { to: '/rules', words: pages.rules, group: 'records' },
  { to: '/people', words: pages.people, group: 'house' },
  { to: '/keys', words: pages.keys, group: 'house', permission: 'keepKeys' },
  { to: '/shares', words: pages.shares, group: 'house', permission: 'share' },
  { to: '/changes', words: pages.changes, group: 'house', permission: 'readAudit' },
  { to: '/season', words: pages.season, group: 'house', permission: 'keepRegister' },
  { to: '/account', words: pages.account, group: 'house' },
];
