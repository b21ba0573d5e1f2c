import { readdirSync, readFileSync } from 'node:fs';
import { findRule, RULES } from '@garboard/domain/rule/rules.ts';
import { describe, expect, it } from 'vitest';
import { rulePages } from './rule-pages.ts';

const FOLDER = new URL('../../docs/rules/', import.meta.url);
const PAGES = rulePages();

describe('docs/rules (else: npm run rule-pages)', () => {
  it('has a page for every rule and an index, and no other beside its README', () => {
    expect(readdirSync(FOLDER).sort()).toEqual(['README.md', ...PAGES.keys()].sort());
  });

  it.each([...PAGES])('%s is what the catalogue makes', (name, text) => {
    expect(readFileSync(new URL(name, FOLDER), 'utf8')).toBe(text);
  });
});

describe('the page of a rule', () => {
  it.each(RULES)(
    'of $id says what it asks, where it stands and how it comes out',
    ({ id, inWords, duties, source }) => {
      const page = PAGES.get(`${id}.md`) ?? '';
      expect(page).toContain(inWords);
      expect(page).toContain(source.clause ?? '—');
      for (const duty of duties) expect(page).toContain(duty.inWords);
      expect(page.includes('## A worked example')).toBe(duties.length > 0);
    },
  );

  it('gives the date that the engine works out for the case', () => {
    expect(findRule('raft-solas')).toBeDefined();
    expect(PAGES.get('raft-solas.md')).toMatch(
      /\| `service` \| \d+ \w+ \d{4} \| \d+ \w+ \d{4} \| [a-z ]+ \| .* due by /,
    );
  });
});
