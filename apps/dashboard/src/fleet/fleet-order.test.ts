import { expect, test } from 'vitest';
import type { FleetRow } from './fleet.query.ts';
import { inOrderOfNeed } from './fleet-order.ts';
import { needSentence } from './need-sentence.ts';

const AS_OF = '2026-11-25';

test('most out of date comes first, then the longest, then who runs out next', () => {
  const rows = [
    vessel('Avocet', 0, { nextOverdueAfter: '2027-03-01' }),
    vessel('Dunlin', 0),
    vessel('Curlew', 0, { nextOverdueAfter: '2026-12-01' }),
    vessel('Petrel', 2, { oldestOverdueAfter: '2026-10-29' }),
    vessel('Plover', 2, { oldestOverdueAfter: '2026-01-01' }),
    vessel('Kittiwake', 6, { oldestOverdueAfter: '2026-11-20' }),
  ];
  const names = inOrderOfNeed(rows).map(({ name }) => name);
  expect(names).toEqual(['Kittiwake', 'Plover', 'Petrel', 'Curlew', 'Avocet', 'Dunlin']);
});

test('what is out of date by law goes before more that is out of date by advice', () => {
  const advice = { ...vessel('Avocet', 0).counts.overdue, common_practice: 9 };
  const advised = { ...vessel('Avocet', 0), counts: { ...vessel('Avocet', 0).counts, overdue: advice } };
  expect(inOrderOfNeed([advised, vessel('Petrel', 1)]).map(({ name }) => name)).toEqual(['Petrel', 'Avocet']);
});

test('what must be put right before use goes before anything that is out of date', () => {
  const urgent = { ...vessel('Dunlin', 0).findings, before_use: 2 };
  const rows = [vessel('Petrel', 5), vessel('Dunlin', 0, { findings: urgent })];
  expect(inOrderOfNeed(rows).map(({ name }) => name)).toEqual(['Dunlin', 'Petrel']);
  const late = vessel('Dunlin', 1, { findings: { ...urgent, before_use: 1 }, oldestOverdueAfter: '2026-11-24' });
  expect(needSentence([rows[1] ?? late], AS_OF)?.rest).toBe(
    ' first: two findings are to be put right before she is used.',
  );
  expect(needSentence([late], AS_OF)?.rest).toBe(
    ' first: one finding is to be put right before she is used; one thing out of date, by one day.',
  );
});

test('the sentence names who comes first, how much and how long', () => {
  const one = vessel('Petrel', 1, { oldestOverdueAfter: '2026-11-24' });
  const many = vessel('Kittiwake', 6, { oldestOverdueAfter: '2026-09-22' });
  expect(needSentence([one], AS_OF)).toEqual({ vessel: 'Petrel', rest: ' first: one thing out of date, by one day.' });
  expect(needSentence([many], AS_OF)?.rest).toBe(' first: six things out of date, the oldest by sixty-four days.');
});

test('where nobody is overdue it says who is next, and without a date it says nothing', () => {
  const next = vessel('Curlew', 0, { nextOverdueAfter: '2026-12-01' });
  expect(needSentence([next], AS_OF)?.rest).toBe(' is next, on 1 Dec 2026. Nobody is overdue.');
  expect(needSentence([vessel('Dunlin', 0)], AS_OF)).toBeNull();
});

function vessel(name: string, overdue: number, dates: Partial<FleetRow> = {}): FleetRow {
  const none = { law: 0, certificate: 0, insurer: 0, maker: 0, common_practice: 0, own: 0 };
  const counts = { overdue: { ...none, law: overdue }, due: none, in_date: none, unknown: none, suspended: none };
  const findings = { before_use: 0, within_weeks: 0, this_season: 0, next_lay_up: 0, observe: 0 };
  const matters = { overdue: 0, due: 0, in_date: 0, unknown: 0 };
  return { vesselId: name, name, counts, findings, matters, laidUp: [], ashore: [], haulOuts: [], marks: [], ...dates };
}
