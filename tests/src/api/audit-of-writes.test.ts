/** Every operation that writes anything leaves who did it, with which key and in which request, beside what it wrote. */
import type { AuditPage } from '@garboard/contract/audit/audit.ts';
import { describe, expect, it } from 'vitest';
import { app, type Headed, signedIn, tell } from '../support/api.ts';
import { everythingOf } from '../support/everything-of.ts';
import {
  ALL,
  addressOf,
  bodyOf,
  contentTypeOf,
  exampleOf,
  ifMatchOf,
  named,
  thingsOf,
  WITH_CREDENTIALS,
} from '../support/operations.ts';

/** Bookkeeping of the write itself, and bytes on their way: what is kept of them is in the audit when it is whole. */
const BESIDE = new Set(['audit', 'audit_head', 'idempotency', 'upload', 'upload_piece']);
const CHANGES = WITH_CREDENTIALS.filter(({ method }) => method !== 'GET');

async function changedTables(before: Record<string, string>, organisationId: string): Promise<string[]> {
  const after = await everythingOf(organisationId);
  return Object.keys(after).filter((table) => after[table] !== before[table]);
}

describe('every change', () => {
  it.each(named(CHANGES))('is in the audit where it wrote anything: %s', async (name, asked) => {
    const owner = await signedIn();
    const things = await thingsOf(owner, undefined, asked);
    const key = await owner.organisation.key('owner');
    const before = await everythingOf(owner.organisation.id);
    const headers: Headed = {
      authorization: `Bearer ${key}`,
      'content-type': contentTypeOf(asked.operation) ?? 'application/json',
      'if-match': ifMatchOf(asked),
    };

    const { status } = await tell(
      app.request,
      asked.method,
      addressOf(asked.path, things),
      { ...headers, 'x-request-id': `of-${name}` },
      bodyOf(asked, things),
    );

    const changed = (await changedTables(before, owner.organisation.id)).filter((table) => !BESIDE.has(table));
    const { items } = (await owner.get<AuditPage>('/v1/audit?limit=200')).body;
    const lines = items.filter(({ requestId }) => requestId === `of-${name}`);
    // The registry of organisations is no table of an organisation: its changes show only here.
    const ofTables = lines.filter(({ subject }) => subject !== 'organisation');
    if (changed.length === 0) return expect(ofTables).toEqual([]);
    expect(status).toBeLessThan(300);
    expect(lines.length).toBeGreaterThan(0);
    for (const { actor, credential, role } of lines)
      expect([`${actor.kind}:${actor.id}`, role]).toEqual([credential, 'owner']);
  });
});

describe('a question that needs a body', () => {
  const questions = ALL.filter(({ operation }) => operation['x-reads-only']);

  it('is asked by POST, and there are such', () => {
    expect(questions.map(({ method }) => method)).toEqual(questions.map(() => 'POST'));
    expect(questions.length).toBeGreaterThan(1);
  });

  it.each(named(questions))('writes nothing: %s', async (_name, { path, operation }) => {
    const owner = await signedIn();
    const before = await everythingOf(owner.organisation.id);

    await owner.post(path, exampleOf(operation), { 'idempotency-key': 'asked-once' });

    expect(await everythingOf(owner.organisation.id)).toEqual(before);
  });
});
