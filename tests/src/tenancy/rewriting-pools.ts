/** Pools whose statements are looked at, and changed, on their way to the server. */
import { openPools, type Pools } from '@garboard/db/pool.ts';
import pg from 'pg';

type Rewrite = (text: string) => string;

/** Only these pools' own connections are touched: the client takes the driver's method over while it is made. */
export function rewritingPools(url: string, rewrite: Rewrite): Pools {
  const plain = pg.Client.prototype.query as (...asked: unknown[]) => unknown;
  pg.Client.prototype.query = function (this: pg.Client, asked: unknown, ...rest: unknown[]) {
    return plain.call(this, rewritten(asked, rewrite), ...rest);
  } as pg.Client['query'];
  try {
    return openPools({ url, size: 2 });
  } finally {
    pg.Client.prototype.query = plain as pg.Client['query'];
  }
}

function rewritten(asked: unknown, rewrite: Rewrite): unknown {
  if (typeof asked === 'string') return rewrite(asked);
  return isConfig(asked) ? { ...asked, text: rewrite(asked.text) } : asked;
}

const isConfig = (asked: unknown): asked is { text: string } =>
  typeof asked === 'object' && asked !== null && Object.getPrototypeOf(asked) === Object.prototype && 'text' in asked;
