/** A typed client of the API, generated from its document: paths, parameters, bodies and answers. */
import createClient, { type Client } from 'openapi-fetch';
import { ApiProblem, type Problem } from './api-problem.ts';
import type { paths } from './generated/api.d.ts';

export type GarboardClient = Client<paths>;

export type ClientOptions = {
  /** Where the program runs, such as `http://127.0.0.1:8080`; empty in a page of its own. */
  readonly address: string;
  /** `gbk_…`. A page of its own has the session's cookie instead. */
  readonly apiKey?: string;
  /** In place of the global one. */
  readonly fetch?: (request: Request) => Promise<Response>;
};

export function garboardClient({ address, apiKey, fetch }: ClientOptions): GarboardClient {
  return createClient<paths>({
    baseUrl: address,
    ...(apiKey !== undefined && { headers: { authorization: `Bearer ${apiKey}` } }),
    ...(fetch && { fetch }),
  });
}

type Answered<T> = { data?: T; error?: unknown; response: Response };

/** The answer, or the problem thrown as an `ApiProblem`. What never reached the API is thrown as it is. */
export async function answer<T>(request: Promise<Answered<T>>): Promise<T> {
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

/** Every row of a list, page by page: `everyPage((cursor) => answer(client.GET(…, { params: { query: { cursor } } })))`. */
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
