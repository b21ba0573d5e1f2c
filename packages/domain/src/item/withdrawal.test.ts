import { expect, it } from 'vitest';
import { formatDay } from '../calendar/day.ts';
import { datesOf, day, fact, owed, owedUnder, type Question } from './facts.test-support.ts';

const extinguisher: Question = {
  kind: 'portable_extinguisher_dry_powder',
  schemes: ['bs5306'],
  facts: [
    fact('manufactured', '2006-09-01'),
    fact('serviced', '2026-03-01', { by: 'competent_person', test: 'extended_service' }),
  ],
};

it('a withdrawal age beats every service: what would fall after it is not asked for, and that is said', () => {
  expect(owed(extinguisher).map(({ duty }) => duty)).toEqual(['visual', 'withdrawal']);
  const withdrawal = owedUnder('fe-bs-insp', extinguisher, 'withdrawal');
  expect(datesOf(withdrawal)).toMatchObject({ dueOn: '2026-09-01' });
  expect(withdrawal.explanation.alsoCounted.map(({ limit, on }) => [limit, on && formatDay(on)])).toEqual([
    [
      'Have the extinguisher serviced by a competent person: not asked for any more, as it would fall after the withdrawal',
      '2027-03-01',
    ],
    [
      'Have the extended service done by a competent person: not asked for any more, as it would fall after the withdrawal',
      '2031-03-01',
    ],
  ]);
});

it('a service due before the withdrawal is still asked for', () => {
  const facts = [fact('manufactured', '2016-09-01'), fact('serviced', '2026-03-01', { by: 'competent_person' })];
  const duties = owed({ ...extinguisher, facts }).map(({ duty }) => duty);
  expect(duties).toEqual(['visual', 'service', 'extended_service', 'withdrawal']);
});

it('a withdrawal age that is not known drops nothing and is itself unknown', () => {
  const facts = [fact('serviced', '2026-03-01', { by: 'competent_person' })];
  expect(owedUnder('fe-bs-insp', { ...extinguisher, facts }, 'withdrawal').outcome.kind).toBe('undated');
  expect(owedUnder('fe-bs-insp', { ...extinguisher, facts }, 'service').outcome.kind).toBe('dated');
});

it('a withdrawn thing owes nothing, and its replacement begins anew', () => {
  const withdrawn = [...(extinguisher.facts ?? []), fact('withdrawn', '2026-08-01')];
  expect(owed({ ...extinguisher, facts: withdrawn })).toEqual([]);
  const renewed = [
    ...withdrawn,
    fact('replaced', '2026-08-10'),
    fact('manufactured', '2026-01', { readOn: day('2026-08-10') }),
  ];
  expect(datesOf(owedUnder('fe-bs-insp', { ...extinguisher, facts: renewed }, 'withdrawal'))).toMatchObject({
    dueOn: '2046-01-01',
  });
});
