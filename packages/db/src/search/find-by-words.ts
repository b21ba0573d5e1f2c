/** Vessels and things aboard, found by the beginnings of words. */
import { sql } from 'kysely';
import type { Scoped } from '../scope.ts';

export type FoundVessel = { readonly id: string; readonly name: string; readonly type: string | null };
export type FoundItem = {
  readonly id: string;
  readonly kind: string;
  readonly label: string;
  readonly zone: string | null;
  readonly serialNumber: string | null;
  readonly withdrawn: boolean;
  readonly vesselId: string;
  readonly vesselName: string;
};

/** Every word asked, with every word on record that begins with it. */
const HITS = (words: string) => sql`
  term as materialized (select word from search_words(${words})),
  hit as materialized (
    select t.word as term, s.word, s.subject_id, s.vessel_id, s.is_item
    from term t
    join search_word s on s.word >= (t.word collate "C") and s.word < (t.word || chr(1114111)) collate "C")`;

/** All the words begin one of the vessel's own; whole words come first. */
export async function findVessels(tx: Scoped, words: string, limit: number): Promise<FoundVessel[]> {
  const { rows } = await sql<FoundVessel>`
    with ${HITS(words)}
    select v.id, v.name, v.type
    from hit h join vessel v on v.id = h.subject_id
    where not h.is_item
    group by v.id, v.name, v.type
    having count(distinct h.term) = (select count(*) from term)
    order by count(distinct h.term) filter (where h.word = h.term) desc, v.name, v.id
    limit ${sql.lit(limit)}`.execute(tx);
  return rows;
}

/** All the words begin one of its own or of its vessel's, one at least its own: "kittiwake raft". */
export async function findItems(tx: Scoped, words: string, limit: number): Promise<FoundItem[]> {
  const { rows } = await sql<FoundItem>`
    with ${HITS(words)},
    candidate as (select distinct subject_id, vessel_id from hit where is_item),
    best as (
      select c.subject_id, count(distinct h.term) filter (where h.word = h.term) as whole
      from candidate c
      join hit h on h.subject_id = c.subject_id or (not h.is_item and h.subject_id = c.vessel_id)
      group by c.subject_id
      having count(distinct h.term) = (select count(*) from term))
    select i.id, i.kind, i.label, i.zone, i.serial_number as "serialNumber", i.withdrawn,
           v.id as "vesselId", v.name as "vesselName"
    from best b
    join item i on i.id = b.subject_id
    join vessel v on v.organisation_id = i.organisation_id and v.id = i.vessel_id
    order by i.withdrawn, b.whole desc, i.label, v.name, i.id
    limit ${sql.lit(limit)}`.execute(tx);
  return rows;
}
