/** The API over the run's database. Every answer is held against the served document on its way to the test. */
import { createApp } from '@garboard/api/app.ts';
import type { LogEntry } from '@garboard/api/deps.ts';
import { conformance, type OpenApi } from '@garboard/api/openapi/conforms.test-support.ts';
import type { Problem } from '@garboard/contract/problem.ts';
import type { Role } from '@garboard/domain/organisation/permission.ts';
import { expect } from 'vitest';
import { pools } from './database.ts';
import { files } from './files.ts';
import { mintOrganisation, NOW, type TestOrganisation } from './organisation.ts';
import { accountsForTests, aPerson, type Granted, linkOf, type TestPerson } from './people.ts';

/** What the app under test has logged so far. */
export const log: LogEntry[] = [];

export const app = createApp({
  pools,
  files,
  now: () => NOW,
  log: (entry) => log.push(entry),
  version: '0.0.0-test',
  accounts: accountsForTests(),
});

export const document = (await (await app.request('/openapi.json')).json()) as OpenApi;
const faultsIn = conformance(document);

/** `Body` is the contract's type of what the test expects: the body itself was held against the document. */
export type Told<Body = unknown> = {
  readonly status: number;
  readonly headers: Headers;
  readonly text: string;
  readonly body: Body;
};
export type Headed = Readonly<Record<string, string>>;
export type Send = (path: string, init: RequestInit) => Response | Promise<Response>;

export type Client = {
  readonly organisation: TestOrganisation;
  get<Body>(path: string, headers?: Headed): Promise<Told<Body>>;
  post<Body>(path: string, body: unknown, headers?: Headed): Promise<Told<Body>>;
  patch<Body>(path: string, body: unknown, headers?: Headed): Promise<Told<Body>>;
  put<Body>(path: string, body: unknown, headers?: Headed): Promise<Told<Body>>;
  delete<Body>(path: string, headers?: Headed): Promise<Told<Body>>;
  /** Somebody with another role in the same organisation. */
  as(role: Role): Promise<Client>;
  /** The same credential at another app. */
  at(send: Send): Client;
};

/** Somebody with that role, by default in an organisation of the test's own; `send` where it is not the app in memory. */
export async function signedIn(
  role: Role = 'owner',
  organisation?: TestOrganisation,
  send: Send = app.request,
): Promise<Client> {
  const home = organisation ?? (await mintOrganisation(pools));
  return clientOf(home, { authorization: `Bearer ${await home.key(role)}` }, send);
}

/** A person with a session, as a browser would come from our own pages. */
export type PersonClient = Client & { readonly person: TestPerson; readonly cookie: string };

export async function signedInPerson(granted: Granted = {}, organisation?: TestOrganisation): Promise<PersonClient> {
  const home = organisation ?? (await mintOrganisation(pools));
  return comeIn(home, await aPerson(home, granted));
}

/** The same person, signed in once more. */
export async function comeIn(home: TestOrganisation, person: TestPerson): Promise<PersonClient> {
  const response = await app.request(await linkOf(home, person.id));
  const cookie = response.headers.get('set-cookie')?.split(';')[0] ?? '';
  return { ...clientOf(home, { cookie, 'sec-fetch-site': 'same-origin' }, app.request), person, cookie };
}

function clientOf(home: TestOrganisation, credential: Headed, send: Send): Client {
  const ask = <Body>(method: string, path: string, headers: Headed, body?: unknown) =>
    tell<Body>(send, method, path, { ...credential, ...headers }, body);
  const json = { 'content-type': 'application/json' };
  return {
    organisation: home,
    get: (path, headers = {}) => ask('GET', path, headers),
    post: (path, body, headers = {}) => ask('POST', path, { ...json, ...headers }, body),
    patch: (path, body, headers = {}) => ask('PATCH', path, { ...json, ...headers }, body),
    put: (path, body, headers = {}) => ask('PUT', path, { ...json, ...headers }, body),
    delete: (path, headers = {}) => ask('DELETE', path, headers),
    as: (other) => signedIn(other, home, send),
    at: (elsewhere) => clientOf(home, credential, elsewhere),
  };
}

/** One request; a text goes as it is, everything else as JSON. */
export async function tell<Body>(
  send: Send,
  method: string,
  path: string,
  headers: Headed,
  body?: unknown,
): Promise<Told<Body>> {
  const content = body === undefined ? {} : { body: typeof body === 'string' ? body : JSON.stringify(body) };
  const response = await send(path, { method, headers, ...content });
  const text = await response.text();
  const contentType = response.headers.get('content-type');
  const parsed: Body = contentType === null ? undefined : /[/+]json$/.test(contentType) ? JSON.parse(text) : text;
  const { status } = response;
  expect(
    faultsIn(method, path.replace(/[?].*$/, ''), { status, contentType, body: parsed }),
    `${method} ${path}: ${text}`,
  ).toEqual([]);
  return { status, headers: response.headers, text, body: parsed };
}

/** The header that names a version. */
export const match = (version: number): Headed => ({ 'if-match': `"${version}"` });

/** Where a refusal found faults. */
export const pointersOf = ({ body }: Pick<Told<Problem>, 'body'>): string[] | undefined =>
  body.errors?.map(({ pointer }) => pointer);
