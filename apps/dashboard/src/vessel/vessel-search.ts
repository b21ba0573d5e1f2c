import { day, text } from '../due-list/due-search.ts';

/** `open` names a reasoning; `from` and `to` pick out what falls due between two days. */
export type VesselSearch = {
  open?: string | undefined;
  from?: string | undefined;
  to?: string | undefined;
  asAt?: string | undefined;
  /** The thing that was looked for: brought into sight and tinted. */
  thing?: string | undefined;
};

export function readVesselSearch(raw: Record<string, unknown>): VesselSearch {
  const read = {
    open: text(raw.open),
    from: day(raw.from),
    to: day(raw.to),
    asAt: day(raw.asAt),
    thing: text(raw.thing),
  };
  return Object.fromEntries(Object.entries(read).filter(([, value]) => value !== undefined));
}
