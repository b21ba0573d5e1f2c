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
import { dayFromNumber, dayNumber, readersToday } from '../ui/calendar.ts';
import type { FindingsQuery } from './finding.query.ts';

const WEEK = 7;

export type Group = keyof typeof strings.list.groups;
type Show = 'week' | 'ended';
export type FindingsSearch = {
  urgency?: UrgencyCode | undefined;
  hazard?: HazardCode | undefined;
  trade?: TradeCode | undefined;
  state?: StateCode | undefined;
  vessel?: string | undefined;
  show?: Show | undefined;
  order?: 'age' | undefined;
  group?: Group | undefined;
};

export function readFindingsSearch(raw: Record<string, unknown>): FindingsSearch {
  return present({
    urgency: oneOf(raw.urgency, urgencyWords),
    hazard: oneOf(raw.hazard, hazardWords),
    trade: oneOf(raw.trade, tradeWords),
    state: oneOf(raw.state, stateWords),
    vessel: text(raw.vessel),
    show: raw.show === 'ended' || raw.show === 'week' ? raw.show : undefined,
    order: raw.order === 'age' ? raw.order : undefined,
    group: oneOf(raw.group, strings.list.groups),
  });
}

export function toFindingsQuery({ vessel, show, group: _, ...asked }: FindingsSearch): FindingsQuery {
  const open = show === 'ended' ? ('false' as const) : ('true' as const);
  return present({
    ...asked,
    vesselId: vessel,
    open,
    doBy: show === 'week' ? dayFromNumber(dayNumber(readersToday()) + WEEK) : undefined,
  });
}

export const isFiltered = ({ show: _, group: __, order: ___, ...asked }: FindingsSearch) =>
  Object.values(asked).some((each) => each !== undefined);
