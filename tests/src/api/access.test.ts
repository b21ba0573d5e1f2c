/** Who may do what, asked of every operation in the served document. Its examples are the requests. */
import { makeKey } from '@garboard/actions/api-key/make-key.ts';
import { createApiKey, revokeKey } from '@garboard/actions/organisation/administer.ts';
import type { Problem } from '@garboard/contract/problem.ts';
import { readToken } from '@garboard/db/organisation/token.ts';
import { ROLES, type Role } from '@garboard/domain/organisation/permission.ts';
import { describe, expect, it } from 'vitest';
import { app, type Headed, signedIn, type Told, tell } from '../support/api.ts';
import { pools } from '../support/database.ts';
import {
  ALL,
  type Asked,
  addressOf,
  bodyOf,
  contentTypeOf,
  ifMatchOf,
  isAboutAThing,
  NO_ONE_S,
  named,
  questionOf,
  type Things,
  thingsOf,
  WITH_CREDENTIALS,
} from '../support/operations.ts';
import { accepted, mintOrganisation, NOW, type TestOrganisation } from '../support/organisation.ts';
import { aPerson, linkOf } from '../support/people.ts';
import { aVessel } from '../support/vessels.ts';
import { allowedTo, NEEDS } from './needs.ts';

/** The operation on those things, with the document's own example as the body. */
function ask<Body>(asked: Asked, things: Things, headers: Headed): Promise<Told<Body>> {
  const { method, path, operation } = asked;
  const body = bodyOf(asked, things);
  const version: Headed = method === 'GET' ? {} : { 'if-match': ifMatchOf(asked) };
  const kind = contentTypeOf(operation);
  const json: Headed = kind === undefined ? version : { 'content-type': kind, ...version };
  return tell<Body>(
    app.request,
    method,
    addressOf(path, things) + questionOf(operation),
    { ...json, ...headers },
    body,
  );
}

const tomorrow = () => new Date(NOW.getTime() + 86_400_000);
const bearer = (key: string): Headed => ({ authorization: `Bearer ${key}` });
describe('the access matrix', () => {
  it('knows every operation that needs a credential, and no other', () => {
    expect(WITH_CREDENTIALS.map(({ operation }) => operation.operationId).sort()).toEqual(Object.keys(NEEDS).sort());
    expect(ALL.filter((asked) => !WITH_CREDENTIALS.includes(asked)).map(({ path }) => path)).toEqual([
      '/v1/invitations/preview',
      '/v1/shared/look',
      '/v1/shared/reports',
      '/v1/shared/answers',
      '/healthz',
      '/readyz',
    ]);
  });

  it.each(named(WITH_CREDENTIALS))('lets exactly those roles in that may: %s', async (name, asked) => {
    const allowed: Role[] = [];
    for (const role of ROLES) {
      const owner = await signedIn();
      const { status } = await ask(
        asked,
        await thingsOf(owner, undefined, asked),
        bearer(await owner.organisation.key(role)),
      );
      // 412: let in, but what there is only one of was changed by the role before.
      expect([200, 201, 204, 403, 412]).toContain(status);
      if (status !== 403) allowed.push(role);
    }
    expect(allowed).toEqual(allowedTo(name));
  });
});

describe('a key narrowed to some vessels or some acts', () => {
  const wanted = { name: 'narrow', vesselIds: 'all', permissions: 'all', expiresAt: tomorrow() } as const;
  const forPrograms = WITH_CREDENTIALS.filter(({ name }) => NEEDS[name] !== null);
  const ofVessels = forPrograms.filter(({ path }) => /\{(vesselId|itemId|overrideId)\}/.test(path));

  it.each(named(forPrograms))('may nothing that it was not made for: %s', async (name, asked) => {
    const owner = await signedIn();
    const made = await makeKey(owner.organisation.ctx(), { ...wanted, role: 'owner', permissions: ['read'] });
    const { status } = await ask(asked, await thingsOf(owner, undefined, asked), bearer(accepted(made).text ?? ''));
    expect(status === 403).toBe(NEEDS[name] !== 'read');
  });

  it.each(named(ofVessels))('has no other vessel and nothing aboard one: %s', async (name, asked) => {
    const owner = await signedIn();
    const things = await thingsOf(owner, undefined, asked);
    const other = await aVessel(owner.organisation.ctx(), ['solas']);
    const narrow = { ...wanted, role: 'yard', vesselIds: [other.id] } as const;
    const key = accepted(await makeKey(owner.organisation.ctx(), narrow)).text ?? '';
    if (!allowedTo(name).includes('yard')) return expect((await ask(asked, things, bearer(key))).status).toBe(403);

    const sameId = { ...bearer(key), 'x-request-id': 'the-same' };
    const hidden = await ask<Problem>(asked, things, sameId);
    const missing = await ask<Problem>(asked, NO_ONE_S, sameId);
    expect([hidden.status, hidden.text]).toEqual([404, missing.text]);
  });
});

describe('what is asked for', () => {
  const writes = WITH_CREDENTIALS.filter(({ operation }) => operation.requestBody);

  it.each(named(writes))(
    'is looked at only after who asks and whether they may: %s',
    async (name, { method, path }) => {
      const at = addressOf(path, NO_ONE_S);
      const key = await (await signedIn()).organisation.key('viewer');
      const unreadable = (headers: Headed) =>
        tell(app.request, method, at, { 'content-type': 'text/plain', ...headers }, '{');

      expect((await unreadable({})).status).toBe(401);
      expect((await unreadable(bearer(key))).status).toBe(allowedTo(name).includes('viewer') ? 415 : 403);
    },
  );
});

describe('without a good credential', () => {
  it.each(named(WITH_CREDENTIALS))('nobody gets in: %s', async (_, asked) => {
    for (const headers of [{}, ...(await badCredentials())]) {
      const { status, headers: told, body } = await ask<Problem>(asked, NO_ONE_S, headers);
      expect([status, body.type], JSON.stringify(headers)).toEqual([401, '/problems/unauthenticated']);
      expect(told.get('www-authenticate')).toMatch(/^Bearer realm="garboard"/);
    }
  });
});

/** What no id looks like. */
const NO_ID: Things = new Proxy({}, { get: (_, name) => (name === 'itemId' ? '%E0%A4%A' : 'x%00') });

let known: Headed[] | undefined;

async function badCredentials(): Promise<Headed[]> {
  known ??= await makeBadCredentials(await mintOrganisation(pools));
  return known;
}

async function makeBadCredentials({ id, key }: TestOrganisation): Promise<Headed[]> {
  const good = await key('owner');
  const revoked = await key('owner');
  const token = readToken(revoked);
  if (!token || !(await revokeKey(pools.owner, token, NOW))) throw new Error('the key was not revoked');
  const expired = await createApiKey(pools.owner, {
    organisationId: id,
    role: 'owner',
    name: 'old',
    now: NOW,
    expiresAt: NOW,
  });
  const link = (await linkOf({ id }, (await aPerson({ id })).id)).replace('/sign-in/', '');
  const { organisationId } = readToken(await (await mintOrganisation(pools)).key()) ?? { organisationId: '' };
  const elsewhere = Buffer.from(organisationId.replaceAll('-', ''), 'hex');
  const moved = `gbk_${Buffer.concat([elsewhere, Buffer.from(good.slice(4), 'base64url').subarray(16)]).toString('base64url')}`;
  const wrongSecret = `${good.slice(0, -4)}AAAA`;
  const basic = { authorization: `Basic ${good}` };
  return [
    ...[revoked, expired, link, moved, wrongSecret, 'gbk_', ''].map(bearer),
    basic,
    { cookie: `garboard_session=${good}` },
    { cookie: `garboard_session=${good}.${'A'.repeat(43)}=` },
  ];
}

describe('another organisation’s things', () => {
  const about = WITH_CREDENTIALS.filter(isAboutAThing).filter(({ name }) => NEEDS[name] !== null);

  it.each(named(about))('answer exactly as missing ones do: %s', async (_, asked) => {
    const theirs = await thingsOf(await signedIn(), undefined, asked);
    const me = bearer(await (await signedIn()).organisation.key('owner'));
    const sameId = { ...me, 'x-request-id': 'the-same' };

    const foreign = await ask<Problem>(asked, theirs, sameId);
    const missing = await ask<Problem>(asked, NO_ONE_S, sameId);

    expect(foreign.status).toBe(404);
    expect(foreign.text).toBe(missing.text);
    expect([...foreign.headers]).toEqual([...missing.headers]);
  });

  it.each(named(about))('answer the same where the id is none at all: %s', async (_, asked) => {
    const me = bearer(await (await signedIn()).organisation.key('owner'));

    const { status } = await ask<Problem>(asked, NO_ID, me);

    expect(status).toBe(404);
  });
});
