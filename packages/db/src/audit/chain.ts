/**
 * The hash that ties an audit row to the one before it: SHA-256 (FIPS 180-4) over the row's content in the
 * canonical form of RFC 8785, in which the hash of the row before stands. Anybody can work it out again from
 * an exported row: take `hash` away, write the rest canonically, hash it.
 */
import { canonical } from '../canonical.ts';
import type { AuditRow, ChainedRow } from './audit-row.ts';

/** What stands before the first row. */
export const NO_HASH: string = '00'.repeat(32);

export function hashOf(content: Omit<ChainedRow, 'hash'>): string {
  return canonical(content).hash.toString('hex');
}

export type Head = { readonly sequence: number; readonly hash: string };

/** The rows in their places after `head`. `before` and `after` become what JSON can carry, as they will be read back. */
export function chain(organisationId: string, head: Head, rows: readonly AuditRow[]): ChainedRow[] {
  const chained: ChainedRow[] = [];
  let { sequence, hash: previous } = head;
  for (const row of rows) {
    sequence += 1;
    const [before, after] = [plain(row.before), plain(row.after)];
    const content = { ...row, at: row.at.toISOString(), before, after, organisationId, sequence, previous };
    previous = hashOf(content);
    chained.push({ ...content, hash: previous });
  }
  return chained;
}

const plain = (value: unknown): unknown => (value === undefined ? null : JSON.parse(JSON.stringify(value)));
