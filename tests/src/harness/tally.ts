/** The count a run ends with. */
import type { TestModule } from 'vitest/node';

export type Tally = { readonly passed: number; readonly failed: number; readonly skipped: number };

/** A file that failed without a failed test of its own (it did not load, a hook broke) and an error that nobody caught count as failures. */
export function countTests(modules: readonly TestModule[], unhandledErrors: readonly unknown[]): Tally {
  const states = modules.flatMap((module) => [...module.children.allTests()].map((test) => test.result().state));
  const count = (...wanted: string[]) => states.filter((state) => wanted.includes(state)).length;
  const brokenFiles = modules.filter(
    (module) => !module.ok() && [...module.children.allTests('failed')].length === 0,
  ).length;
  return {
    passed: count('passed'),
    failed: count('failed', 'pending') + brokenFiles + unhandledErrors.length,
    skipped: count('skipped'),
  };
}

export function inWords({ passed, failed, skipped }: Tally): string {
  return `${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`;
}
