/**
 * Statements by name: PostgreSQL parses and plans each text once a connection instead of once a call.
 *
 * Only texts that come again are named, and only so many: a text with a list of another length each time
 * would otherwise fill every connection's memory with plans nobody uses twice.
 */
import { createHash } from 'node:crypto';
import pg from 'pg';

const MOST_NAMES = 400;

/** Answers with the name of a text that was seen before, as long as there is room for names. */
export function statementNames(most: number = MOST_NAMES): (text: string) => string | undefined {
  const names = new Map<string, string>();
  const seen = new Set<string>();
  return (text) => {
    const known = names.get(text);
    if (known || names.size >= most) return known;
    if (!seen.has(text)) {
      if (seen.size >= most * 4) seen.clear();
      seen.add(text);
      return undefined;
    }
    const name = createHash('sha256').update(text).digest('hex').slice(0, 32);
    names.set(text, name);
    return name;
  };
}

/** A client that names what comes again. What has no parameters (`begin`, `commit`) goes as it is. */
export function namingClient(): typeof pg.Client {
  const nameOf = statementNames();
  class NamingClient extends pg.Client {}
  const plain = pg.Client.prototype.query as (...asked: unknown[]) => unknown;
  NamingClient.prototype.query = function (this: pg.Client, ...asked: unknown[]) {
    const [text, values, ...rest] = asked;
    const name = typeof text === 'string' && Array.isArray(values) && values.length > 0 ? nameOf(text) : undefined;
    return name ? plain.call(this, { name, text, values }, ...rest) : plain.apply(this, asked);
  } as pg.Client['query'];
  return NamingClient;
}
