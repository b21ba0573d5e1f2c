/** How links for outsiders leave the API, and what they show. */

import type { Seen } from '@garboard/actions/share/look-at-shared.ts';
import type { LinkWithText } from '@garboard/actions/share/make-share-link.ts';
import type { SharedView, ShareLink, ShareLinkWithText } from '@garboard/contract/share/share-link.ts';
import type { DueEntry } from '@garboard/db/due-list/due-entry.ts';
import type { FindingRecord } from '@garboard/db/finding/finding-record.ts';
import type { GivenWork } from '@garboard/db/share/read-work.ts';
import type { ShareLinkRecord } from '@garboard/db/share/share-links.ts';
import type { VesselRecord } from '@garboard/db/vessel/vessel-record.ts';
import { type Day, formatDay } from '@garboard/domain/calendar/day.ts';
import { NEXT } from '@garboard/domain/finding/next-state.ts';
import { offerOf, readsAs } from '@garboard/domain/finding/words.ts';
import { presentDue } from '../due-list/present-due.ts';
import { withoutNulls } from '../request/without-nulls.ts';
import { fromMinor } from '../vessel/money.ts';

export const presentLink = ({ vesselIds, findingIds, ...rest }: ShareLinkRecord): ShareLink => ({
  ...withoutNulls(rest),
  ...(findingIds.length > 0 && { findingIds: [...findingIds] }),
  ...(vesselIds !== 'all' && { vesselIds: [...vesselIds] }),
});

export const presentLinkWithText = ({ link, text }: LinkWithText): ShareLinkWithText => ({
  ...presentLink(link),
  ...(text !== null && { token: text }),
});

export function presentShared({ link, organisation, day, vessels, due, work, offers, isCut }: Seen): SharedView {
  return {
    organisation,
    label: link.label,
    asOf: formatDay(day),
    expiresAt: link.expiresAt,
    purpose: link.purpose,
    wholeFleet: link.vesselIds === 'all',
    work: work.map(presentWork),
    offers: offers.flatMap(presentOffer),
    vessels: vessels.map((vessel) => presentVessel(vessel, link.showsValue)),
    due: due.map((entry) => presentLine(entry, day)),
    isCut,
  };
}

function presentWork({ at, vesselName, record: { number, finding } }: GivenWork): SharedView['work'][number] {
  const { zone, what, work, remedy } = finding;
  const canBeReported = NEXT[remedy.state].reported_done !== undefined;
  return {
    at,
    vessel: vesselName,
    number,
    zone,
    what,
    ...(work !== null && { work }),
    reads: readsAs(finding),
    canBeReported,
  };
}

function presentOffer({ number, finding }: FindingRecord): SharedView['offers'] {
  const offer = offerOf(finding);
  if (offer === null) return [];
  return [{ number, zone: finding.zone, offer, ...(finding.owner && { answered: { ...finding.owner } }) }];
}

/** No identifiers and no ids: with a HIN or a call sign an outsider could pass for the owner. */
function presentVessel(vessel: VesselRecord, showsValue: boolean): SharedView['vessels'][number] {
  const { name, type, builtYear, lengthOverallM, hullMaterial, rig, homePort, schemes, value } = vessel;
  return {
    ...withoutNulls({ name, type, builtYear, lengthOverallM, hullMaterial, rig, homePort }),
    schemes: [...schemes],
    ...(showsValue && value && { value: fromMinor(value) }),
  };
}

function presentLine(entry: DueEntry, day: Day): SharedView['due'][number] {
  const { vessel, item, ruleId, duty, scheme, source, suspendedUntil, ...row } = presentDue(entry, day);
  const { label: thing, quantity, zone } = item;
  return { vessel: vessel.name, thing, quantity, ...(zone && { zone }), ...row };
}
