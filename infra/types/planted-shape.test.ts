/** A shape of rule that nobody handles does not compile: one is planted in each union, and the compiler must see it. */
import { execFileSync } from 'node:child_process';
import { cpSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { afterAll, expect, it } from 'vitest';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const PLACE = `${ROOT}.cache/planted-shape`;
const RULE = `${PLACE}/src/rule/rule.ts`;

afterAll(() => rmSync(PLACE, { recursive: true, force: true }));

/** The files of the domain that do not compile once `planted` stands at the head of the union. */
function filesThatFail(union: string, planted: string): string[] {
  rmSync(PLACE, { recursive: true, force: true });
  mkdirSync(PLACE, { recursive: true });
  cpSync(`${ROOT}packages/domain/src`, `${PLACE}/src`, { recursive: true, filter: (file) => !/[.]test/.test(file) });
  const text = readFileSync(RULE, 'utf8');
  const grown = text.replace(`export type ${union} =\n`, `export type ${union} =\n  | ${planted}\n`);
  expect(grown).not.toBe(text);
  writeFileSync(RULE, grown);
  const config = { extends: `${ROOT}tsconfig.json`, include: ['src'], compilerOptions: { noEmit: true } };
  writeFileSync(`${PLACE}/tsconfig.json`, JSON.stringify(config));
  return errorsOf().flatMap((line) => /src\/([\w/.-]+)\(\d+,\d+\): error/.exec(line)?.[1] ?? []);
}

function errorsOf(): string[] {
  try {
    execFileSync(process.execPath, [`${ROOT}node_modules/typescript7/bin/tsc`, '-p', PLACE], { encoding: 'utf8' });
    return [];
  } catch (error) {
    return (error as { stdout: string }).stdout.split('\n');
  }
}

it.each([
  ['Limit', ['item/count-limit.ts', 'item/limit-words.ts', 'rule/rule-reads.ts', 'rule/compiled/compile-limit.ts']],
  ['Interval', ['item/count-interval.ts', 'item/limit-words.ts', 'rule/rule-reads.ts', 'item/remedy.ts']],
  ['Condition', ['item/weigh-condition.ts', 'rule/rule-reads.ts']],
])('a %s that nobody handles does not compile', { timeout: 120_000 }, (union, places) => {
  const failing = filesThatFail(union, "{ readonly kind: 'planted' }");
  expect(places.filter((place) => !failing.includes(place))).toEqual([]);
});
