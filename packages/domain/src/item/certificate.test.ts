import { describe, expect, it } from 'vitest';
import { formatDay } from '../calendar/day.ts';
import type { Fact } from './fact.ts';
import { datesOf, day, fact, owed, owedUnder, type Question } from './facts.test-support.ts';

type Survey = 'initial_survey' | 'annual_survey' | 'intermediate_survey' | 'renewal_survey';
const survey = (test: Survey, on: string, more: Partial<Fact> = {}): Fact =>
  fact('inspected', on, { id: `${test} ${on}`, test, by: 'surveyor', ...more });
const print = (on: string, more: Partial<Fact> = {}) => fact('printed_expiry', on, { id: `print ${on}`, ...more });

const workboat = (...facts: Fact[]): Question => ({ kind: 'workboat_certificate', schemes: ['uk_workboat'], facts });
const expiry = (...facts: Fact[]) => {
  const { outcome } = owedUnder('cert-ukwb', workboat(...facts));
  return outcome.kind === 'dated' ? formatDay(outcome.dueOn) : 'unknown';
};
const INITIAL = survey('initial_survey', '2024-05-20');

describe('the certificate in force', () => {
  it.each([
    ['is that of the only survey', [INITIAL], '2029-05-19'],
    ['is that on record by its expiry alone', [print('2028-08-31')], '2028-08-31'],
    [
      'is the last of a chain, each gone on from the one before',
      [INITIAL, survey('renewal_survey', '2029-03-10'), survey('renewal_survey', '2034-05-01')],
      '2039-05-17',
    ],
    [
      'begins anew with an initial survey, whatever was before',
      [INITIAL, survey('initial_survey', '2029-03-10')],
      '2034-03-09',
    ],
    [
      'cannot go on from one that would be over by then',
      [INITIAL, survey('renewal_survey', '2034-06-01')],
      '2039-05-31',
    ],
    [
      'goes on from the print of the old one, not from what was worked out',
      [INITIAL, print('2028-11-30'), survey('renewal_survey', '2028-10-01')],
      '2033-11-29',
    ],
    [
      'is not renewed by a survey that failed, or by a yard',
      [
        INITIAL,
        survey('renewal_survey', '2029-03-10', { outcome: 'failed' }),
        survey('renewal_survey', '2029-03-20', { doneBy: { capacity: 'yard' } }),
      ],
      '2029-05-19',
    ],
    ['is unknown when nothing is on record', [], 'unknown'],
  ])('%s', (_, facts, on) => {
    expect(expiry(...facts)).toBe(on);
  });

  it('says what it goes on from, and that its own print is not on record', () => {
    const { explanation } = owedUnder(
      'cert-ukwb',
      workboat(print('2029-05-19'), survey('renewal_survey', '2029-03-10')),
    );
    expect(explanation.sentence).toContain(
      'Renewal survey on 10 March 2029; the certificate before it ran to 19 May 2029, and the new one goes on from there.',
    );
    expect(explanation.assumed).toEqual([
      'The expiry printed on the certificate is not on record: worked out as the latest that the clause allows.',
    ]);
    expect(explanation.binds?.factIds).toEqual(['print 2029-05-19', 'renewal_survey 2029-03-10']);
  });

  it('takes the print that was read on it, and doubts one that runs longer than the clause allows', () => {
    const { explanation, outcome } = owedUnder('cert-ukwb', workboat(INITIAL, print('2029-06-30')));
    expect(outcome).toMatchObject({ dueOn: day('2029-06-30') });
    expect(explanation.sentence).toContain('The expiry on the certificate is 30 June 2029.');
    expect(explanation.doubts).toEqual([
      'The expiry on the certificate lies after 19 May 2029, the latest that the clause allows.',
    ]);
    expect(explanation.assumed).toEqual([]);
  });

  it('asks for the survey or the print, and says where they are found', () => {
    expect(owedUnder('cert-ukwb', workboat()).explanation.missing).toEqual([
      {
        what: 'the survey that began the workboat certificate or the expiry printed on it',
        whereFound: 'on the face of the certificate',
      },
    ]);
  });
});

describe('where the issuer may date the expiry', () => {
  const convention = (attributes: Question['attributes']): Question => ({
    kind: 'convention_certificate',
    schemes: ['harmonised_survey'],
    facts: [survey('initial_survey', '2026-03-12')],
    attributes: attributes ?? {},
  });

  it.each([
    ['is the day before, when that is recorded', { expiryLessOneDay: true }, '2031-03-11', 0],
    ['is the corresponding day, when that is recorded', { expiryLessOneDay: false }, '2031-03-12', 0],
    ['is the day before, and said to be assumed, when it is not', {}, '2031-03-11', 1],
  ])('the expiry %s', (_, attributes, dueOn, assumed) => {
    const renewal = owedUnder('hssc-renew', convention(attributes));
    expect(datesOf(renewal)).toMatchObject({ dueOn });
    expect(renewal.explanation.assumed.filter((said) => said.includes('issuer dates the expiry'))).toHaveLength(
      assumed,
    );
  });
});

describe('what falls on an anniversary', () => {
  const convention = (...facts: Fact[]): Question => ({
    kind: 'convention_certificate',
    schemes: ['harmonised_survey'],
    facts,
  });

  it('says of a survey before the window why it does not count', () => {
    const early = survey('annual_survey', '2026-07-01');
    const { explanation } = owedUnder('hssc-annual', convention(print('2030-10-14'), early));
    expect(explanation.setAside).toEqual([
      {
        factId: early.id,
        why: 'It was done before 14 July 2026, too early to count for the anniversary on 14 October 2026.',
      },
    ]);
  });

  it('says when only the expiry is known that surveys may be missing', () => {
    const { explanation } = owedUnder('hssc-annual', convention(print('2030-10-14')));
    expect(explanation.assumed).toContain(
      'The survey that began it is not on record: it is taken to run for 5 years, from 14 October 2025.',
    );
    expect(explanation.doubts).toContain('No survey since then is on record: if one was done, record it.');
  });

  it('of a certificate too short for it is not owed', () => {
    const short = convention(survey('initial_survey', '2026-03-12'), print('2028-03-11'));
    expect(owed(short).map(({ ruleId }) => ruleId)).toEqual(['hssc-annual', 'hssc-renew']);
  });

  it('in the third year alone, where the certificate lives no longer than to see that', () => {
    const short = convention(survey('initial_survey', '2026-03-12'), print('2029-03-11'));
    expect(datesOf(owedUnder('hssc-inter', short))).toMatchObject({ windows: [['2027-12-11', '2028-06-11']] });
  });

  it('once all are done falls under the next certificate, and says so', () => {
    const done = convention(print('2029-10-14'), survey('intermediate_survey', '2027-10-01'));
    const inter = owedUnder('hssc-inter', done);
    expect(datesOf(inter)).toMatchObject({ dueOn: '2032-10-14', overdueAfter: '2033-01-14' });
    expect(inter.explanation.assumed).toContain(
      'It is taken to be renewed on its expiry, 14 October 2029: the renewal decides.',
    );
  });
});
