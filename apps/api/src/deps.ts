/** What the API is given, and what travels with a request. */

import type { Accounts } from '@garboard/accounts/open-accounts.ts';
import type { Outbox } from '@garboard/accounts/outbox.ts';
import type { Actor } from '@garboard/actions/context.ts';
import type { Files } from '@garboard/blobs/files.ts';
import type { Person } from '@garboard/db/organisation/sessions.ts';
import type { Db } from '@garboard/db/pool.ts';
import type { Scope } from '@garboard/db/scope.ts';
import type { Metrics } from './health/metrics.ts';

export type RequestLine = {
  readonly event: 'request';
  readonly requestId: string;
  readonly method: string;
  /** The path's template, never its values: a sign-in link is a secret. */
  readonly path: string;
  readonly status: number;
  readonly ms: number;
  readonly actor: Actor['kind'] | 'nobody';
  readonly organisationId: string | null;
};

export type LogEntry = RequestLine | { readonly event: 'fault'; readonly requestId: string; readonly error: unknown };

/** How many requests a minute: of one credential, and from one address, whoever asks there. */
export type RateLimits = { readonly credential: number; readonly address: number };

/** Who runs the server, for whoever reads its document. */
export type Contact = { readonly name: string; readonly url: string; readonly email: string };

export type Deps = {
  readonly pools: { readonly app: Db; readonly owner?: Db };
  /** Where photographs and papers are kept, and who looks at them first. */
  readonly files: Files;
  now(): Date;
  log(entry: LogEntry): void;
  /** The built dashboard; without it only the API is served. */
  readonly dashboardDir?: string | null;
  readonly version: string;
  readonly contact?: Contact;
  /** Absent: nobody is told to wait. */
  readonly rateLimits?: RateLimits;
  /** Where pages of other hosts may call the API from a browser, with a key. Absent: nowhere. */
  readonly corsOrigins?: readonly string[];
  /** Absent: there is nothing to be read at /metrics. */
  readonly metrics?: { readonly token: string; readonly counts: Metrics };
  /** Told when a change of an own rule has begun, so that it need not wait to be found. */
  onRuleChange?(): void;
  /** Without it nobody can sign in, and programs' keys are the only credentials. */
  readonly accounts?: Accounts;
  /** Letters that are shown on a page instead of being sent: for the demo on one's own machine. */
  readonly outbox?: Outbox;
};

/** Somebody in an organisation, for all or some of its vessels. */
export type Caller = Scope & { readonly actor: Actor };

export type ApiEnv = { Variables: { requestId: string; caller?: Caller; person?: Person } };
