import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { RULES } from '@garboard/domain/rule/rules.ts';
import { describe, expect, it } from 'vitest';
import { readRepository } from '../verify/files.ts';
import { figuresInCode, figuresOfRule, figuresSaid } from './figures.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const ROWS = readFileSync(`${ROOT}docs/sources.md`, 'utf8')
  .split('\n')
  .filter((line) => line.startsWith('| '));
const CODE = readRepository(ROOT).filter(
  ({ name }) => /^(packages|apps)\/[^/]+\/src\/.*[.]tsx?$/.test(name) && !/[.]test(-support)?[.]tsx?$/.test(name),
);
const CONSTANTS = CODE.flatMap(({ name: file, text }) => figuresInCode(text).map((each) => ({ file, ...each })));

describe('docs/sources.md', () => {
  it.each(RULES)('says every figure of $id', (rule) => {
    const said = figuresSaid(ROWS.find((row) => row.startsWith(`| \`${rule.id}\` |`)) ?? '');
    expect(figuresOfRule(rule).filter((figure) => !said.has(figure))).toEqual([]);
  });

  it.each(CONSTANTS)('has a row for $name in $file, with its figure', ({ name, figure }) => {
    const row = ROWS.find((line) => line.includes(`\`${name}\``)) ?? '';
    expect(row).not.toBe('');
    expect([...figuresSaid(row)]).toContain(figure);
  });

  it('is held against constants that are there', () => {
    expect(CONSTANTS.map(({ name }) => name)).toEqual(expect.arrayContaining(['LEAD_DAYS', 'SESSION_DAYS']));
  });
});

describe('a figure', () => {
  it('is found wherever a rule has it', () => {
    const belts = RULES.filter(({ id }) => id === 'eng-belt').flatMap(figuresOfRule);
    expect(belts.sort()).toEqual(['100 hours', '12 months', '24 months', '500 hours']);
  });

  it.each([
    ['12 months; 17 with permission', ['12 months', '17 months']],
    ['suspect at 10, out at 20 years', ['120 months', '240 months']],
    ['2 weeks, 30 days', ['14 days', '30 days']],
  ])('is read out of "%s"', (text, figures) => {
    expect([...figuresSaid(text)]).toEqual(expect.arrayContaining(figures));
  });

  it('is taken from a constant that names its unit, and from no other', () => {
    const code = 'const LEAD_DAYS = 30;\nexport const FURTHEST_YEARS = 5 * 10;\nconst MS_PER_DAY = 86_400_000;';
    expect(figuresInCode(code)).toEqual([
      { name: 'LEAD_DAYS', figure: '30 days' },
      { name: 'FURTHEST_YEARS', figure: '600 months' },
    ]);
  });
});
