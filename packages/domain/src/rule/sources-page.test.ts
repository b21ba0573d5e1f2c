import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { RULES } from './rules.ts';

const PAGE = readFileSync(new URL('../../../../docs/sources.md', import.meta.url), 'utf8');
const ROWS = PAGE.split('\n').filter((line) => line.startsWith('| `'));
const WORDS = {
  read: 'read',
  second_hand: 'second-hand',
  memory: 'from memory',
  common_practice: 'common practice, no source',
} as const;

it('docs/sources.md has one row for each rule, and no other', () => {
  expect(ROWS.map((row) => row.split('`')[1]).sort()).toEqual(RULES.map(({ id }) => id).sort());
});

it.each(RULES)('docs/sources.md says of $id what the rule says', ({ id, source }) => {
  const cells = ROWS.find((row) => row.startsWith(`| \`${id}\` |`))?.split(' | ') ?? [];
  expect(cells[2]).toBe(source.address ? `[${source.publication}](${source.address})` : (source.publication ?? '—'));
  expect(cells.slice(3, 5)).toEqual([source.clause ?? '—', WORDS[source.status]]);
});
