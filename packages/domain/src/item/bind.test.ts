import { describe, expect, it } from 'vitest';
import { formatDay } from '../calendar/day.ts';
import { datesOf, fact, owedUnder, type Question } from './facts.test-support.ts';

describe('a gas hose, whose print, fitting and manufacture compete', () => {
  const hose = (...facts: Question['facts'] & object): Question => ({ kind: 'gas_hose', facts });
  const printed = fact('printed_expiry', '2028-02');
  const fitted = fact('installed', '2023-06-10');
  const made = fact('manufactured', '2022-11');

  it.each([
    ['the print, when it is the earliest', [printed, fact('installed', '2024-01-01')], '2028-02-29'],
    ['the fitting, when it is the earliest', [printed, fitted], '2028-06-10', true],
    ['manufacture, to the end of its month', [made, fitted], '2027-11-30'],
    ['whichever is known', [fitted], '2028-06-10'],
  ])('goes by %s', (_, facts, on, printBinds = false) => {
    expect(datesOf(owedUnder('lpg-hose', hose(...facts)))).toMatchObject({ dueOn: printBinds ? '2028-02-29' : on });
  });

  it('keeps the limits that did not bind, and says which could not be counted', () => {
    const { explanation } = owedUnder('lpg-hose', hose(made, fitted));
    expect(explanation.binds).toMatchObject({ limit: '5 years after manufacture', factIds: [made.id] });
    expect(explanation.alsoCounted.map(({ limit, on }) => [limit, on && formatDay(on)])).toEqual([
      ['the date printed on it', null],
      ['5 years after fitting', '2028-06-10'],
    ]);
    expect(explanation.missing).toEqual([
      { what: 'the date printed on it', whereFound: 'printed along some hoses as a replace-by date' },
    ]);
  });

  it('has no date when nothing is known, and says what is missing and where it is found', () => {
    const { outcome } = owedUnder('lpg-hose', hose());
    expect(outcome).toMatchObject({ kind: 'undated' });
    expect(outcome.kind === 'undated' && outcome.missing.map(({ what }) => what)).toEqual([
      'the date printed on it',
      'the date of fitting',
      'the date of manufacture',
    ]);
  });
});

describe('a fallback', () => {
  const flare = (...facts: Question['facts'] & object): Question => ({
    kind: 'hand_flare',
    schemes: ['offshore_racing'],
    facts,
  });
  const made = fact('manufactured', '2022-03-10');

  it('counts only while the first limit gives no day', () => {
    expect(datesOf(owedUnder('pyro-osr', flare(made)))).toMatchObject({ dueOn: '2026-03-10' });
    expect(datesOf(owedUnder('pyro-osr', flare(made, fact('printed_expiry', '2027-01'))))).toMatchObject({
      dueOn: '2027-01-31',
    });
  });
});

describe('a duty that starts at an age', () => {
  const raft = (...facts: Question['facts'] & object): Question => ({ kind: 'liferaft', schemes: ['solas'], facts });
  const made = fact('manufactured', '2015-06-20');
  const nap = (on: string) => fact('tested', on, { test: 'necessary_additional_pressure' });

  it.each([
    ['is due at that age exactly while nothing is done', [made], '2025-06-20'],
    ['is due no earlier for a test done long before', [made, nap('2020-06-20')], '2025-06-20'],
    ['is due a year after a test done just before', [made, nap('2025-01-10')], '2026-01-10'],
    ['is due a year after the last test from then on', [made, nap('2026-07-01')], '2027-07-01'],
    ['counts from the test when the age is not known', [nap('2026-07-01')], '2027-07-01'],
  ])('%s', (_, facts, dueOn) => {
    expect(datesOf(owedUnder('raft-nap', raft(...facts)))).toMatchObject({ dueOn });
  });

  it('has no date when neither the age nor a test is known', () => {
    expect(datesOf(owedUnder('raft-nap', raft()))).toEqual({
      missing: ['the last necessary-additional-pressure test by a liferaft service station', 'the date of manufacture'],
    });
  });
});

describe('a duty that begins some time after fitting', () => {
  const brass = (...facts: Question['facts'] & object): Question => ({ kind: 'seacock', facts });
  const fitted = fact('installed', '2020-06-30');
  const inspected = (on: string) => fact('inspected', on, { by: 'surveyor' });

  it('says that its beginning is its date while nothing is done, and that it is waited for after an early act', () => {
    expect(datesOf(owedUnder('sea-dzr', brass(fitted)))).toMatchObject({ dueOn: '2025-06-30' });
    expect(datesOf(owedUnder('sea-dzr', brass(fitted, inspected('2023-04-01'))))).toMatchObject({
      dueOn: '2025-06-30',
    });
  });

  it('has no date once it is done and nothing more is planned', () => {
    expect(datesOf(owedUnder('sea-dzr', brass(fitted, inspected('2025-06-30'))))).toEqual({
      missing: ['the next haul-out'],
    });
  });

  it('says what is missing when the fitting is not on record', () => {
    expect(datesOf(owedUnder('sea-dzr', brass()))).toEqual({ missing: ['the next haul-out', 'the date of fitting'] });
  });
});

describe('a limit that closes the window', () => {
  const survey = (test: 'initial_survey' | 'annual_survey', on: string) =>
    fact('inspected', on, { id: on, test, by: 'surveyor' });
  const annual = (...done: string[]) =>
    owedUnder('annual-ukwb', {
      kind: 'workboat_certificate',
      schemes: ['uk_workboat'],
      facts: [survey('initial_survey', '2024-05-20'), ...done.map((on) => survey('annual_survey', on))],
    });

  it.each([
    ['later than the window changes nothing', [], '2025-05-20', '2025-08-19', [['2025-05-20', '2025-08-19']]],
    ['inside the window ends it', ['2025-04-01'], '2026-05-20', '2026-06-30', [['2026-05-20', '2026-06-30']]],
    ['on its first day leaves that day', ['2025-02-21'], '2026-05-20', '2026-05-20', [['2026-05-20', '2026-05-20']]],
    ['before the window binds itself, and no window is left', ['2025-02-10'], '2026-05-09', '2026-05-09', undefined],
  ])('%s', (_, done, dueOn, overdueAfter, windows) => {
    expect(datesOf(annual(...done))).toEqual({ dueOn, overdueAfter, ...(windows && { windows }) });
  });

  it('is shown beside the anniversary, whichever binds', () => {
    const limits = ({ binds, alsoCounted }: ReturnType<typeof annual>['explanation']) =>
      [binds, ...alsoCounted].map((counted) => counted?.limit);
    expect(limits(annual('2025-04-01').explanation)).toEqual([
      'the anniversary on 20 May 2026',
      '15 months beginning with the last annual survey',
    ]);
    expect(limits(annual('2025-02-10').explanation)).toEqual([
      '15 months beginning with the last annual survey',
      'the anniversary on 20 May 2026',
    ]);
  });
});

describe('a limit that only shortens', () => {
  const attributes = { standard: 'iso_9650', makerIntervalMonths: 36, packedContentsExpireOn: '2027-08' };
  const raft = (more: Partial<Question>): Question => ({
    kind: 'liferaft',
    schemes: ['uk_small_commercial'],
    attributes,
    ...more,
  });
  const facts = [fact('serviced', '2025-05-01', { by: 'liferaft_service_station' })];

  it('binds when it is the earlier', () => {
    expect(datesOf(owedUnder('raft-9650', raft({ facts })))).toMatchObject({ dueOn: '2027-08-31' });
  });

  it('does not bind when it is the later, and is not missed when it is not known', () => {
    const later = { ...attributes, packedContentsExpireOn: '2029-01' };
    expect(datesOf(owedUnder('raft-9650', raft({ facts, attributes: later })))).toMatchObject({ dueOn: '2028-05-01' });
    const { packedContentsExpireOn: _, ...without } = attributes;
    const { explanation } = owedUnder('raft-9650', raft({ facts, attributes: without }));
    expect(explanation.missing).toEqual([]);
  });

  it('never gives a date on its own: an unknown service stays unknown', () => {
    expect(owedUnder('raft-9650', raft({})).outcome.kind).toBe('undated');
  });
});
