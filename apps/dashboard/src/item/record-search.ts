import { text } from '../due-list/due-search.ts';

/** What the form starts with: the thing, what happened, and the fact that is to be struck out. */
export type RecordSearch = {
  item?: string | undefined;
  fact?: string | undefined;
  test?: string | undefined;
  corrects?: string | undefined;
};

export function readRecordSearch(raw: Record<string, unknown>): RecordSearch {
  const read = { item: text(raw.item), fact: text(raw.fact), test: text(raw.test), corrects: text(raw.corrects) };
  return Object.fromEntries(Object.entries(read).filter(([, value]) => value !== undefined));
}
