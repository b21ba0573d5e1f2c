/** One forbidden import for each wall: what the check must catch before its silence means anything. */
export type Planted = { readonly wall: string; readonly file: string; readonly text: string };

const planted = (wall: string, file: string, ...imports: string[]): Planted => ({
  wall,
  file,
  text: `${imports.map((from) => `import '${from}';`).join('\n')}\n`,
});

/** Files that the planted imports lead to; they import nothing. */
export const TARGETS = [
  'packages/domain/src/rule.ts',
  'packages/contract/src/vessel.ts',
  'packages/db/src/pool.ts',
  'apps/api/src/app.ts',
  'apps/host/src/main.ts',
];

export const PLANTED: readonly Planted[] = [
  planted('wall-of-domain', 'packages/domain/src/reads-files.ts', 'node:fs'),
  planted('wall-of-domain', 'packages/domain/src/queries.ts', '../../db/src/pool.ts'),
  planted('wall-of-domain-tests', 'packages/domain/src/reach.test.ts', '../../db/src/pool.ts'),
  planted('wall-of-contract', 'packages/contract/src/borrows.ts', '../../domain/src/rule.ts'),
  planted('wall-of-contract-tests', 'packages/contract/src/reach.test.ts', '../../domain/src/rule.ts'),
  planted('wall-of-client', 'packages/client/src/parses.ts', '../../contract/src/vessel.ts'),
  planted('wall-of-client', 'packages/client/src/reads-files.ts', 'node:fs'),
  planted('wall-of-client-tests', 'packages/client/src/reach.test.ts', '../../../apps/api/src/app.ts'),
  planted('wall-of-db', 'packages/db/src/speaks-http.ts', '../../contract/src/vessel.ts'),
  planted('wall-of-db-tests', 'packages/db/src/reach.test.ts', '../../../apps/api/src/app.ts'),
  planted('wall-of-actions', 'packages/actions/src/promises.ts', '../../contract/src/vessel.ts'),
  planted('wall-of-actions-tests', 'packages/actions/src/reach.test.ts', '../../../apps/api/src/app.ts'),
  planted('wall-of-accounts', 'packages/accounts/src/knows-tenants.ts', '../../db/src/pool.ts'),
  planted('wall-of-accounts-tests', 'packages/accounts/src/reach.test.ts', '../../db/src/pool.ts'),
  planted('wall-of-blobs', 'packages/blobs/src/knows-tables.ts', '../../db/src/pool.ts'),
  planted('wall-of-blobs-tests', 'packages/blobs/src/reach.test.ts', '../../db/src/pool.ts'),
  planted('wall-of-embedded', 'packages/embedded/src/knows-tables.ts', '../../db/src/pool.ts'),
  planted('wall-of-embedded-tests', 'packages/embedded/src/reach.test.ts', '../../db/src/pool.ts'),
  planted('wall-of-api', 'apps/api/src/starts.ts', '../../host/src/main.ts'),
  planted('wall-of-api-tests', 'apps/api/src/reach.test.ts', '../../host/src/main.ts'),
  planted('wall-of-scheduler', 'apps/scheduler/src/asks-api.ts', '../../api/src/app.ts'),
  planted('wall-of-scheduler-tests', 'apps/scheduler/src/reach.test.ts', '../../api/src/app.ts'),
  planted('wall-of-dashboard', 'apps/dashboard/src/queries.ts', '../../../packages/db/src/pool.ts'),
  planted('wall-of-dashboard', 'apps/dashboard/src/calls-server.ts', '../../api/src/app.ts'),
  planted('wall-of-dashboard-tests', 'apps/dashboard/src/reach.test.tsx', '../../api/src/app.ts'),
  planted(
    'contract-only-as-types-in-dashboard',
    'apps/dashboard/src/parses.ts',
    '../../../packages/contract/src/vessel.ts',
  ),
  planted('wall-of-seed', 'seed/src/asks-api.ts', '../../apps/api/src/app.ts'),
  planted('wall-of-seed-tests', 'seed/src/reach.test.ts', '../../apps/api/src/app.ts'),
  planted('no-circular', 'packages/domain/src/circle.ts', './circle.ts'),
];
