/** What a job is, and what it is given. */
import type { BlobStore } from '@garboard/blobs/blob-store.ts';
import type { Db } from '@garboard/db/pool.ts';

export type SchedulerDeps = {
  readonly url: string;
  readonly owner: Db;
  readonly app: Db;
  readonly store: BlobStore;
  now(): Date;
  log(entry: { level: 'info' | 'warn' | 'error'; message: string } & Record<string, unknown>): void;
};

/** `cron` in UTC. A job carries no data: it looks at the state when it runs, so downtime loses nothing. */
export type Job = { readonly name: string; readonly cron: string; run(deps: SchedulerDeps): Promise<void> };
