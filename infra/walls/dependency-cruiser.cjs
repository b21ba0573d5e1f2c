/**
 * Who may import whom: the packages are walls, and this file keeps them up. A wall lists what its package may
 * reach; everything else is forbidden. Its tests may reach the harness and any tool besides.
 * Needs TypeScript below 7 beside it: with 7 it reads no file at all and reports success.
 */
const TEST_FILE = '[.]test[.]tsx?$';
const HARNESS = '^tests/src/support/';
const ANY_LIBRARY = 'node_modules/';
/** A file that does not exist is the type-checker's to report. */
const UNRESOLVED = '^([.]|@garboard/)';

const packages = (...names) => names.map((name) => `^packages/${name}/`);
const libraries = (...names) => names.map((name) => `node_modules/(@types/)?${name}/`);

const forbid = (name, from, to) => ({ name, severity: 'error', from, to });

/** Two rules: what the package's own files may reach, and what its tests may. */
function wall(folder, { reaches, node }) {
  const name = folder.split('/').at(-1);
  const inside = `^${folder}/`;
  const outside = { pathNot: [inside, UNRESOLVED, ...reaches], ...(node ? { dependencyTypesNot: ['core'] } : {}) };
  const outsideTests = {
    pathNot: [inside, UNRESOLVED, HARNESS, ANY_LIBRARY, ...reaches],
    dependencyTypesNot: ['core'],
  };
  return [
    forbid(`wall-of-${name}`, { path: inside, pathNot: TEST_FILE }, outside),
    forbid(`wall-of-${name}-tests`, { path: `${inside}.*${TEST_FILE}` }, outsideTests),
  ];
}

module.exports = {
  forbidden: [
    ...wall('packages/domain', { reaches: [], node: false }),
    ...wall('packages/contract', { reaches: libraries('zod'), node: false }),
    ...wall('packages/client', { reaches: libraries('openapi-fetch'), node: false }),
    ...wall('packages/db', {
      reaches: [...packages('domain'), ...libraries('canonicalize', 'kysely', 'pg')],
      node: true,
    }),
    ...wall('packages/actions', {
      reaches: [...packages('blobs', 'domain', 'db'), ...libraries('kysely', 'uuid')],
      node: true,
    }),
    ...wall('packages/blobs', { reaches: [ANY_LIBRARY], node: true }),
    ...wall('packages/accounts', { reaches: [ANY_LIBRARY], node: true }),
    ...wall('packages/embedded', { reaches: [ANY_LIBRARY], node: true }),
    ...wall('apps/api', { reaches: ['^packages/', ANY_LIBRARY], node: true }),
    ...wall('apps/scheduler', { reaches: [...packages('blobs', 'domain', 'db', 'actions'), ANY_LIBRARY], node: true }),
    ...wall('apps/dashboard', { reaches: [...packages('contract', 'client'), ANY_LIBRARY], node: false }),
    ...wall('seed', { reaches: [...packages('blobs', 'domain', 'db', 'actions'), ANY_LIBRARY], node: true }),
    forbid(
      'contract-only-as-types-in-dashboard',
      { path: '^apps/dashboard/', pathNot: TEST_FILE },
      { path: '^packages/contract/', dependencyTypesNot: ['type-only'] },
    ),
    // A circle of types alone is gone when the program runs.
    forbid('no-circular', {}, { circular: true, viaOnly: { dependencyTypesNot: ['type-only'] } }),
  ],
};
