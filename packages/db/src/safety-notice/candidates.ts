/** The things of a notice's kinds, sifted by what is or was written of their plates: read in batches. */
import type { ItemKindId } from '@garboard/domain/item/item-kind.ts';
import { matchNotice } from '@garboard/domain/safety-notice/match-notice.ts';
import type { SafetyNotice } from '@garboard/domain/safety-notice/notice.ts';
import type { Plate } from '@garboard/domain/safety-notice/plate.ts';
import { sql } from 'kysely';
import type { Scoped } from '../scope.ts';

export type Sifted = Plate & {
  readonly itemId: string;
  readonly label: string;
  readonly kind: ItemKindId;
  readonly vesselId: string;
  readonly vesselName: string;
  /** Why the plate alone rules it out; `null`: it does not. */
  readonly ruledOut: readonly string[] | null;
};

type Row = Omit<Sifted, 'ruledOut'> & {
  /** Something was written of it before, or answered: it stays in sight whatever is written now. */
  readonly told: boolean;
  /** Its number on record may be the one of what was replaced. */
  readonly replaced: boolean;
};

const ROWS_A_BATCH = 2_000;
const BEFORE_ALL = '00000000-0000-0000-0000-000000000000';

/** In the order of the items, only after `afterItem`. The facts are not read: they can only rule out more. */
export async function* sift(tx: Scoped, notice: SafetyNotice, afterItem = BEFORE_ALL): AsyncGenerator<Sifted> {
  let after = afterItem;
  for (;;) {
    const rows = await batch(tx, notice, after);
    for (const { told, replaced, ...thing } of rows)
      yield { ...thing, ruledOut: told ? null : ruledOut(notice, thing, replaced) };
    if (rows.length < ROWS_A_BATCH) return;
    after = rows.at(-1)?.itemId ?? after;
  }
}

/** Those that the plate does not rule out. */
export async function* candidates(tx: Scoped, notice: SafetyNotice, afterItem?: string): AsyncGenerator<Sifted> {
  for await (const each of sift(tx, notice, afterItem)) if (each.ruledOut === null) yield each;
}

function ruledOut(notice: SafetyNotice, thing: Plate & { kind: ItemKindId }, replaced: boolean) {
  const plate = replaced ? { ...thing, serialNumber: null } : thing;
  const match = matchNotice(notice, { kind: thing.kind, plate, manufactured: null });
  return match.kind === 'not_affected' ? match.because : null;
}

async function batch(tx: Scoped, { id, kinds }: SafetyNotice, after: string): Promise<readonly Row[]> {
  const { rows } = await sql<Row>`
    select i.id::text as "itemId", i.label, i.kind, i.vessel_id::text as "vesselId", v.name as "vesselName",
      i.maker, i.model, i.serial_number as "serialNumber", i.quantity,
      (exists (select from former_plate f where f.item_id = i.id)
        or exists (select from notice_answer a where a.item_id = i.id and a.notice_id = ${id}::uuid)) as told,
      exists (select from fact r where r.item_id = i.id and r.fact = 'replaced') as replaced
    from item i
    join vessel v on v.organisation_id = i.organisation_id and v.id = i.vessel_id
    where i.kind = any(${[...kinds]}::text[]) and i.id > ${after}::uuid
    order by i.id
    limit ${sql.lit(ROWS_A_BATCH)}`.execute(tx);
  return rows;
}
