/** A finding as stored: what its entries come to, and what has no entry: its number and its version. */

import { isDeepStrictEqual } from 'node:util';
import { rankOf } from '@garboard/domain/finding/codes.ts';
import type { Finding } from '@garboard/domain/finding/finding.ts';
import { isOpen } from '@garboard/domain/finding/next-state.ts';
import type { Selectable } from 'kysely';
import type { FindingTable } from './tables.ts';

export type FindingRecord = {
  readonly id: string;
  readonly vesselId: string;
  /** Counts the vessel's findings, from 1. */
  readonly number: number;
  readonly version: number;
  readonly createdAt: string;
  readonly finding: Finding;
};

export function toFindingRecord(row: Selectable<FindingTable>): FindingRecord {
  return {
    id: row.id,
    vesselId: row.vessel_id,
    number: row.number,
    version: row.version,
    createdAt: row.created_at.toISOString(),
    finding: row.detail,
  };
}

export type StoredFinding = { readonly record: FindingRecord; readonly columns: Selectable<FindingTable> };

/** Whether what is stored is what the entries come to, in every column. */
export function isAsItsEntries({ columns }: StoredFinding, finding: Finding): boolean {
  const wanted = { ...findingColumns(finding), detail: finding };
  return Object.entries(wanted).every(([name, value]) =>
    isDeepStrictEqual(columns[name as keyof typeof wanted], JSON.parse(JSON.stringify(value))),
  );
}

/** The columns that are searched and sorted by, from the finding itself. */
export function findingColumns(finding: Finding) {
  const { state } = finding.remedy;
  return {
    item_id: finding.itemId,
    zone: finding.zone,
    what: finding.what,
    hazard: finding.hazard,
    urgency: finding.urgency,
    state,
    is_open: isOpen(state),
    trade: finding.trade,
    responsible: finding.responsible,
    first_seen_on: finding.firstSeenOn,
    last_seen_on: finding.lastSeenOn,
    rank: rankOf(finding),
    detail: JSON.stringify(finding),
  };
}
