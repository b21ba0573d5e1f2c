import { z } from '@hono/zod-openapi';
import { Hono } from 'hono';
import { describe, expect, it } from 'vitest';
import type { ApiEnv } from '../deps.ts';
import { nextCursor, readCursor } from './cursor.ts';

const Key = z.object({ id: z.int() });
const QUESTION = { list: 'things', filter: { kind: 'raft' } };

async function cursorAfter(id: number | undefined) {
  const app = new Hono<ApiEnv>().get('/things', (c) =>
    c.text(nextCursor(c, QUESTION, id === undefined ? undefined : { id }) ?? 'none'),
  );
  const response = await app.request('/things?kind=raft&cursor=old');
  return { cursor: await response.text(), link: response.headers.get('link') };
}

describe('a cursor', () => {
  it('leads back to the key that it was made after', async () => {
    const { cursor } = await cursorAfter(7);
    expect(readCursor(cursor, QUESTION, Key)).toEqual({ ok: true, after: { id: 7 } });
  });

  it('stands in the Link header with the filters, in place of the one before', async () => {
    const { cursor, link } = await cursorAfter(7);
    expect(link).toBe(`</things?kind=raft&cursor=${cursor}>; rel="next"`);
  });

  it('is not there after the last page', async () => {
    expect(await cursorAfter(undefined)).toEqual({ cursor: 'none', link: null });
  });

  it('is none of another question’s', async () => {
    const { cursor } = await cursorAfter(7);
    expect(readCursor(cursor, { ...QUESTION, filter: {} }, Key)).toEqual({ ok: false });
  });

  it('is refused where its key has another shape', async () => {
    const { cursor } = await cursorAfter(7);
    expect(readCursor(cursor, QUESTION, z.object({ name: z.string() }))).toEqual({ ok: false });
  });

  it('is not needed for the first page', () => {
    expect(readCursor(undefined, QUESTION, Key)).toEqual({ ok: true });
  });
});
