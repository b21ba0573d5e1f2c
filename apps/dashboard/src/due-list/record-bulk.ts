/** Facts for many things in one request, and their undoing in one. */
import { answer } from '@garboard/client/client.ts';
import type { components } from '@garboard/client/generated/api.d.ts';
import { api } from '../api/client.ts';
import type { NewFact } from '../item/fact-draft.ts';
import { strings } from '../strings/bulk.ts';
import type { DueRow } from './due.query.ts';

type Outcome = components['schemas']['FactOutcome'];
type Recorded = Extract<Outcome, { result: 'recorded' }>;
export type BulkRow = { readonly row: DueRow; readonly outcome: Outcome };
export type BulkResult = { readonly rows: readonly BulkRow[] };

/** As many as the API takes at once. */
export const MOST_AT_ONCE = 200;

type Asked = { readonly itemId: string; readonly fact: NewFact };

const send = async (items: Asked[], key: string) =>
  (await answer(api.POST('/v1/facts', { params: { header: { 'Idempotency-Key': key } }, body: { items } }))).items;

export async function recordBulk(things: readonly DueRow[], fact: NewFact, key: string): Promise<BulkResult> {
  const outcomes = await send(
    things.map(({ item }) => ({ itemId: item.id, fact })),
    key,
  );
  return { rows: things.flatMap((row, index) => pair(row, outcomes[index])) };
}

const pair = (row: DueRow, outcome: Outcome | undefined): BulkRow[] => (outcome ? [{ row, outcome }] : []);

export const recordedIn = ({ rows }: BulkResult): { row: DueRow; outcome: Recorded }[] =>
  rows.flatMap(({ row, outcome }) => (outcome.result === 'recorded' ? [{ row, outcome }] : []));

/** Facts are only ever added: an undo adds to each a correction that strikes it out and puts nothing in its place. */
export async function undoBulk(result: BulkResult, key: string): Promise<BulkResult> {
  const recorded = recordedIn(result);
  const outcomes = await send(
    recorded.map(({ outcome: { itemId, fact } }) => ({
      itemId,
      fact: retraction(fact),
    })),
    key,
  );
  return { rows: recorded.flatMap(({ row }, index) => pair(row, outcomes[index])) };
}

function retraction({ id, fact, on, outcome, evidence }: Recorded['fact']): NewFact {
  return { fact, on, outcome, evidence, corrects: id, retracts: true, note: strings.undoNote };
}
