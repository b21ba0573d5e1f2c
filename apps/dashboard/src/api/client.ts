/** The dashboard's only way to the API: the client generated from the OpenAPI document. */
import createClient from 'openapi-fetch';
import type { paths } from '../generated/api.d.ts';
import { ApiProblem, type Problem } from './api-problem.ts';

export const api = createClient<paths>({ baseUrl: '' });

type Response<T> = { data?: T; error?: unknown; response: globalThis.Response };

/** The answer, or the problem thrown. */
export async function answer<T>(request: Promise<Response<T>>): Promise<T> {
  const { data, error, response } = await request;
  if (data !== undefined) return data;
  throw new ApiProblem(
    isProblem(error) ? error : { type: 'about:blank', title: response.statusText, status: response.status },
  );
}

function isProblem(error: unknown): error is Problem {
  return typeof error === 'object' && error !== null && 'title' in error && 'status' in error;
}

type Page<Row> = { items: Row[]; nextCursor: string | null };

/** Every row of a list that is known to be short: one vessel's items, the catalogue. */
export async function everyPage<Row>(page: (cursor: string | undefined) => Promise<Page<Row>>): Promise<Row[]> {
  const rows: Row[] = [];
  let cursor: string | null | undefined;
  do {
    const next: Page<Row> = await page(cursor ?? undefined);
    rows.push(...next.items);
    cursor = next.nextCursor;
  } while (cursor !== null);
  return rows;
}
