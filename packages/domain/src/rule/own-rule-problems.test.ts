import { describe, expect, it } from 'vitest';
import { WEEKLY_LOOK } from './own-rule.test-support.ts';
import type { OwnRuleDefinition } from './own-rule.ts';
import { ownRuleProblems } from './own-rule-problems.ts';

const pointers = (more: Partial<OwnRuleDefinition>) =>
  ownRuleProblems({ ...WEEKLY_LOOK, ...more }).map(({ pointer }) => pointer);

describe('what is wrong with a rule of one’s own', () => {
  it('is nothing, where it can be turned into a rule', () => {
    expect(ownRuleProblems(WEEKLY_LOOK)).toEqual([]);
    expect(pointers({ limits: [{ kind: 'printed_expiry' }], resets: [] })).toEqual([]);
    expect(pointers({ window: { before: 'P0D', after: 'P1W' } })).toEqual([]);
  });

  it.each<[string, Partial<OwnRuleDefinition>, string[]]>([
    ['a kind that is none', { kinds: ['sea_anchor' as 'hull'] }, ['/kinds/0']],
    ['a kind named twice', { kinds: ['hull', 'hull'] }, ['/kinds/1']],
    ['no act to count from', { resets: [] }, ['/resets']],
    ['a date as an act', { resets: [{ act: 'manufactured', by: [] }] }, ['/resets/0/act']],
    ['no length of time', { limits: [{ kind: 'interval', from: 'last_done', plus: 'P0D' }] }, ['/limits/0/plus']],
    [
      'more than fifty years',
      { limits: [{ kind: 'before_event', event: 'race_start', within: 'P51Y' }] },
      ['/limits/0/within'],
    ],
    [
      'the same limit twice',
      {
        limits: [
          { kind: 'interval', from: 'last_done', plus: 'P1Y' },
          { kind: 'interval', from: 'last_done', plus: 'P2Y' },
        ],
      },
      ['/limits/1'],
    ],
    ['hours of what has no meter', { limits: [{ kind: 'running_hours', hours: 100 }] }, ['/limits/0']],
    [
      'a first time that never counts',
      { limits: [{ kind: 'printed_expiry' }], first: { from: 'installed', plus: 'P1Y' } },
      ['/first'],
    ],
    ['a window of a century', { window: { before: 'P0D', after: 'P100Y' } }, ['/window/after']],
  ])('is named: %s', (_, wrong, found) => {
    expect(pointers(wrong)).toEqual(found);
  });

  it('is named all at once', () => {
    expect(
      pointers({
        kinds: ['sea_anchor' as 'hull'],
        limits: [{ kind: 'interval', from: 'last_done', plus: 'P0D' }],
        resets: [],
        window: { before: 'P99Y', after: 'P99Y' },
      }),
    ).toEqual(['/kinds/0', '/resets', '/limits/0/plus', '/window/before', '/window/after']);
  });
});
