/** What the findings' address may say. Anything else in it is left aside. */
import { oneOf, present, text } from '../due-list/due-search.ts';
import { strings } from '../strings/finding.ts';
import {
  type HazardCode,
  hazardWords,
  type StateCode,
  stateWords,
  type TradeCode,
  tradeWords,
  type UrgencyCode,
  urgencyWords,
} from '../strings/finding-codes.ts';
import type { FindingsQuery } from './finding.query.ts';

export type Group = keyof typeof strings.list.groups;
export type FindingsSearch = {
  urgency?: UrgencyCode | undefined;
  hazard?: HazardCode | undefined;
  trade?: TradeCode | undefined;
  state?: StateCode | undefined;
  vessel?: string | undefined;
  show?: 'ended' | undefined;
  group?: Group | undefined;
};

export function readFindingsSearch(raw: Record<string, unknown>): FindingsSearch {
  return present({
    urgency: oneOf(raw.urgency, urgencyWords),
    hazard: oneOf(raw.hazard, hazardWords),
    trade: oneOf(raw.trade, tradeWords),
    state: oneOf(raw.state, stateWords),
    vessel: text(raw.vessel),
    show: raw.show === 'ended' ? ('ended' as const) : undefined,
    group: oneOf(raw.group, strings.list.groups),
  });
}

export function toFindingsQuery({ vessel, show, group: _, ...asked }: FindingsSearch): FindingsQuery {
  return present({ ...asked, vesselId: vessel, open: show === 'ended' ? ('false' as const) : ('true' as const) });
}

export const isFiltered = ({ show: _, group: __, ...asked }: FindingsSearch) =>
  Object.values(asked).some((each) => each !== undefined);
