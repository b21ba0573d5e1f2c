import { createHash } from 'node:crypto';
import canonicalize from 'canonicalize';
import { describe, expect, it } from 'vitest';
import type { AuditRow } from './audit-row.ts';
import { chain, hashOf, NO_HASH } from './chain.ts';

const row = (id: string, after: unknown): AuditRow => ({
  ...{ id, at: new Date('2026-11-25T12:00:00.000Z'), actor: 'api_key:k', credential: 'api_key:k', role: 'owner' },
  ...{ requestId: 'r', verb: 'change_vessel', subject: 'vessel', subjectId: 'v', before: null, after },
});

describe('the canonical form', () => {
  /** RFC 8785, section 3.2.2, input and output. */
  it('is that of the RFC’s own sample', () => {
    const sample = `{"numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
      "string": "\\u20ac$\\u000F\\u000aA'\\u0042\\u0022\\u005c\\\\\\"\\/", "literals": [null, true, false]}`;

    expect(canonicalize(JSON.parse(sample))).toBe(
      String.raw`{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\u000f\nA'B\"\\\\\"/"}`,
    );
  });

  /** RFC 8785, section 3.2.3, the order of names. */
  it('puts names in the order of their UTF-16 code units', () => {
    const names = ['\u20ac', '\r', '\ufb33', '1', '\ud83d\ude00', '\u0080', '\u00f6'];
    const written = canonicalize(Object.fromEntries(names.map((name) => [name, 0]))) ?? '';

    expect(Object.keys(JSON.parse(written)).filter((name) => name !== '1')).toEqual([
      '\r',
      '\u0080',
      '\u00f6',
      '\u20ac',
      '\ud83d\ude00',
      '\ufb33',
    ]);
  });
});

describe('the chain', () => {
  it('starts from nothing, counts without gaps, and each row holds the hash before it', () => {
    const rows = chain('o', { sequence: 0, hash: NO_HASH }, [row('a', { rig: 'ketch' }), row('b', { rig: 'sloop' })]);

    expect(rows.map(({ sequence }) => sequence)).toEqual([1, 2]);
    expect(rows.map(({ previous }) => previous)).toEqual([NO_HASH, rows[0]?.hash]);
  });

  it('can be worked out with nothing but SHA-256 and the order of names', () => {
    const [{ hash, ...content } = { hash: '' }] = chain('o', { sequence: 0, hash: NO_HASH }, [
      row('a', { b: 1, a: 'x' }),
    ]);
    const byHand = `{"actor":"api_key:k","after":{"a":"x","b":1},"at":"2026-11-25T12:00:00.000Z","before":null,"credential":"api_key:k","id":"a","organisationId":"o","previous":"${NO_HASH}","requestId":"r","role":"owner","sequence":1,"subject":"vessel","subjectId":"v","verb":"change_vessel"}`;

    expect(hash).toBe(createHash('sha256').update(byHand).digest('hex'));
    expect(hash).toBe(hashOf(content as never));
  });

  it('does not depend on the order in which the database gives names back', () => {
    const one = chain('o', { sequence: 0, hash: NO_HASH }, [row('a', { b: 1, a: { d: 2, c: 3 } })]);
    const other = chain('o', { sequence: 0, hash: NO_HASH }, [row('a', { a: { c: 3, d: 2 }, b: 1 })]);

    expect(one[0]?.hash).toBe(other[0]?.hash);
  });
});
