/** What the fleet board's address may say. */
import { day, text } from '../due-list/due-search.ts';
import { ZOOMS, type Zoom } from './horizon-scale.ts';

export type FleetSearch = {
  asAt?: string | undefined;
  fleet?: 'table' | undefined;
  /** How many months the horizon shows; left out: as many as fit. */
  months?: Zoom | undefined;
  /** The saved view that these words come from. */
  view?: string | undefined;
};

export function readFleetSearch(raw: Record<string, unknown>): FleetSearch {
  const read = {
    asAt: day(raw.asAt),
    fleet: raw.fleet === 'table' ? ('table' as const) : undefined,
    months: ZOOMS.find((months) => String(months) === raw.months),
    view: text(raw.view),
  };
  return Object.fromEntries(Object.entries(read).filter(([, value]) => value !== undefined));
}

/** The due list stood at this address once; links to it that were kept or sent still open it. */
const OF_THE_DUE_LIST = ['standing', 'vessel', 'kind', 'scheme', 'weight', 'until', 'open'];

export function isForDueList(raw: Record<string, unknown>): boolean {
  return OF_THE_DUE_LIST.some((key) => raw[key] !== undefined);
}
