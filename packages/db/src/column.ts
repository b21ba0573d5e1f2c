/** Columns whose value differs between writing and reading. */
import type { ColumnType } from 'kysely';

export type Instant = ColumnType<Date, Date | string, Date | string>;
export type Json<T> = ColumnType<T, string, string>;
export type MaybeJson<T> = ColumnType<T | null, string | null, string | null>;
export type MaybeInstant = ColumnType<Date | null, Date | null | undefined, Date | null>;
