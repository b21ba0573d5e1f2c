/** Who may do what, asked of every operation in the served document. Its examples are the requests. */
import { createApiKey, createSignInLink } from '@garboard/actions/organisation/administer.ts';
import type { Problem } from '@garboard/contract/problem.ts';
import { revokeApiKey } from '@garboard/db/organisation/credentials.ts';
import { readToken } from '@garboard/db/organisation/token.ts';
import { inOrganisation, wholeFleet } from '@garboard/db/scope.ts';
import { ROLES, type Role } from '@garboard/domain/organisation/permission.ts';
import { describe, expect, it } from 'vitest';
import { app, type Headed, signedIn, type Told, tell } from '../support/api.ts';
import { pools } from '../support/database.ts';
import {
  ALL,
  type Asked,
  addressOf,
  exampleOf,
  isAboutAThing,
  NO_ONE_S,
  named,
  questionOf,
  type Things,
  thingsOf,
  WITH_CREDENTIALS,
} from '../support/operations.ts';
import { mintOrganisation, NOW, type TestOrganisation } from '../support/organisation.ts';

const EVERYBODY = ROLES;
const RECORDERS: readonly Role[] = ['owner', 'manager', 'surveyor', 'yard'];
const KEEPERS: readonly Role[] = ['owner', 'manager'];
/** An API key has no session to end, whatever its role. */
const NOBODY: readonly Role[] = [];

/** The access matrix, written down a second time on purpose. */
const MAY: Record<string, readonly Role[]> = {
  listVessels: EVERYBODY,
  createVessel: KEEPERS,
  getVessel: EVERYBODY,
  changeVessel: KEEPERS,
  listSituations: EVERYBODY,
  recordSituation: KEEPERS,
  listEvents: EVERYBODY,
  recordEvent: RECORDERS,
  readIdentifiers: EVERYBODY,
  listItems: EVERYBODY,
  addItem: KEEPERS,
  addItems: KEEPERS,
  getItem: EVERYBODY,
  changeItem: KEEPERS,
  listFacts: EVERYBODY,
  recordFact: RECORDERS,
  recordFacts: RECORDERS,
  listObligations: EVERYBODY,
  listDue: EVERYBODY,
  listFleet: EVERYBODY,
  listFleetSamples: EVERYBODY,
  search: EVERYBODY,
  getSeason: EVERYBODY,
  setSeason: KEEPERS,
  listSavedViews: EVERYBODY,
  saveView: RECORDERS,
  getSavedView: EVERYBODY,
  changeView: RECORDERS,
  removeView: RECORDERS,
  restoreView: RECORDERS,
  explainDueDates: EVERYBODY,
  listRules: EVERYBODY,
  addRule: KEEPERS,
  getRule: EVERYBODY,
  changeRule: KEEPERS,
  endRule: KEEPERS,
  getRuleChange: EVERYBODY,
  listOverrides: EVERYBODY,
  setOverride: KEEPERS,
  getOverride: EVERYBODY,
  endOverride: KEEPERS,
  listSafetyNotices: EVERYBODY,
  enterSafetyNotice: KEEPERS,
  matchSafetyNotice: EVERYBODY,
  getSafetyNotice: EVERYBODY,
  listNoticeItems: EVERYBODY,
  answerSafetyNotice: RECORDERS,
  withdrawSafetyNotice: KEEPERS,
  listItemKinds: EVERYBODY,
  listSchemes: EVERYBODY,
  listVesselTemplates: EVERYBODY,
  listAudit: KEEPERS,
  exportAudit: KEEPERS,
  getSession: EVERYBODY,
  endSession: NOBODY,
};

/** The operation on those things, with the document's own example as the body. */
function ask<Body>({ method, path, operation }: Asked, things: Things, headers: Headed): Promise<Told<Body>> {
  const body = exampleOf(operation);
  const version: Headed = method === 'GET' ? {} : { 'if-match': '"1"' };
  const json: Headed = body === undefined ? version : { 'content-type': 'application/json', ...version };
  return tell<Body>(
    app.request,
    method,
    addressOf(path, things) + questionOf(operation),
    { ...json, ...headers },
    body,
  );
}

const bearer = (key: string): Headed => ({ authorization: `Bearer ${key}` });
describe('the access matrix', () => {
  it('knows every operation that needs a credential, and no other', () => {
    expect(WITH_CREDENTIALS.map(({ operation }) => operation.operationId).sort()).toEqual(Object.keys(MAY).sort());
    expect(ALL.filter((asked) => !WITH_CREDENTIALS.includes(asked)).map(({ path }) => path)).toEqual([
      '/healthz',
      '/readyz',
    ]);
  });

  it.each(named(WITH_CREDENTIALS))('lets exactly those roles in that may: %s', async (name, asked) => {
    const owner = await signedIn();
    const allowed: Role[] = [];
    for (const role of ROLES) {
      const { status } = await ask(asked, await thingsOf(owner), bearer(await owner.organisation.key(role)));
      // 412: let in, but what there is only one of was changed by the role before.
      expect([200, 201, 403, 412]).toContain(status);
      if (status !== 403) allowed.push(role);
    }
    expect(allowed).toEqual(MAY[name]);
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
      expect((await unreadable(bearer(key))).status).toBe(MAY[name]?.includes('viewer') ? 415 : 403);
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
  await inOrganisation(pools.app, wholeFleet(id), (tx) => revokeApiKey(tx, readToken(revoked)?.id ?? '', NOW));
  const expired = await createApiKey(pools.owner, {
    organisationId: id,
    role: 'owner',
    name: 'old',
    now: NOW,
    expiresAt: NOW,
  });
  const link = await createSignInLink(pools.owner, {
    organisationId: id,
    role: 'owner',
    now: NOW,
    expiresAt: new Date(NOW.getTime() + 1),
  });
  const { organisationId } = readToken(await (await mintOrganisation(pools)).key()) ?? { organisationId: '' };
  const elsewhere = Buffer.from(organisationId.replaceAll('-', ''), 'hex');
  const moved = `gbk_${Buffer.concat([elsewhere, Buffer.from(good.slice(4), 'base64url').subarray(16)]).toString('base64url')}`;
  const wrongSecret = `${good.slice(0, -4)}AAAA`;
  const basic = { authorization: `Basic ${good}` };
  return [
    ...[revoked, expired, link, moved, wrongSecret, 'gbk_', ''].map(bearer),
    basic,
    { cookie: `garboard_session=${good}` },
  ];
}

describe('another organisation’s things', () => {
  const about = WITH_CREDENTIALS.filter(isAboutAThing);

  it.each(named(about))('answer exactly as missing ones do: %s', async (_, asked) => {
    const theirs = await thingsOf(await signedIn());
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
