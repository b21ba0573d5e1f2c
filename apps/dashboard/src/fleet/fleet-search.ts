/** What the fleet board's address may say. */
import { day } from '../due-list/due-search.ts';

export type FleetSearch = { asAt?: string | undefined; fleet?: 'table' | undefined };

export function readFleetSearch(raw: Record<string, unknown>): FleetSearch {
  const read = { asAt: day(raw.asAt), fleet: raw.fleet === 'table' ? ('table' as const) : undefined };
  return Object.fromEntries(Object.entries(read).filter(([, value]) => value !== undefined));
}

/** The due list stood at this address once; links to it that were kept or sent still open it. */
const OF_THE_DUE_LIST = ['standing', 'vessel', 'kind', 'scheme', 'weight', 'until', 'open'];

export function isForDueList(raw: Record<string, unknown>): boolean {
  return OF_THE_DUE_LIST.some((key) => raw[key] !== undefined);
}
