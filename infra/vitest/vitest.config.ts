import { long } from '@garboard/tests/support/long.ts';
import { defineConfig } from 'vitest/config';

const MINUTE = 60_000;

const tests = (...folders: string[]): string[] => folders.map((folder) => `${folder}/**/*.test.{ts,tsx}`);
const END_TO_END = tests('tests/src/end-to-end');

/** Groups run one after another, so that two cores are never asked for more than two workers' work. */
const group = (order: number, maxWorkers: number) => ({ maxWorkers, sequence: { groupOrder: order } });

export default defineConfig({
  root: new URL('../..', import.meta.url).pathname,
  test: {
    reporters: [['default', { summary: false }]],
    testTimeout: long ? 30 * MINUTE : MINUTE,
    hookTimeout: 2 * MINUTE,
    teardownTimeout: 20_000,
    // As long as the browser's own waits, which poll the same pages.
    expect: { poll: { timeout: 30_000 } },
    cache: false,
    projects: [
      {
        extends: true,
        test: {
          name: 'pure',
          include: tests('packages/domain/src', 'packages/contract/src', 'apps/dashboard/src', 'infra'),
          isolate: false,
          ...group(0, 2),
        },
      },
      {
        extends: true,
        test: {
          name: 'database',
          include: tests(
            'packages/db/src',
            'packages/blobs/src',
            'packages/actions/src',
            'apps/{api,scheduler,host}/src',
            'seed/src',
            'tests/src',
          ),
          exclude: END_TO_END,
          ...group(1, 2),
        },
      },
      { extends: true, test: { name: 'embedded', include: tests('packages/embedded/src'), ...group(2, 1) } },
      { extends: true, test: { name: 'browser', include: END_TO_END, ...group(3, 2) } },
    ],
  },
});
