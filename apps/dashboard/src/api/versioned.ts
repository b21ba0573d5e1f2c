/** An answer with the version that a change of it must name. */
import { answer } from '@garboard/client/client.ts';

export type Versioned<T> = { readonly data: T; readonly version: string };

export async function versioned<T>(
  request: Promise<{ data?: T; error?: unknown; response: Response }>,
): Promise<Versioned<T>> {
  const told = await request;
  return { data: await answer(Promise.resolve(told)), version: told.response.headers.get('etag') ?? '' };
}
