import { addDays, addMonths, type Day, endOfMonth, formatDay, parseDay } from '@garboard/domain/calendar/day.ts';
import { expect, test } from 'vitest';
import { CHARTER } from './fleets/charter.ts';
import { planFleet } from './fleets/plan-fleet.ts';
import { SCHOOL } from './fleets/school.ts';
import { YARD } from './fleets/yard.ts';
import { type Judged, judgeFleet, standings } from './testing/judge-plan.ts';

const TODAY = parseDay('2026-11-25') as Day;
const EVERYTHING = [SCHOOL, YARD, CHARTER].flatMap((book) => judgeFleet(planFleet(book, TODAY)));

function aboard(vessel: string, label: string): Judged {
  const found = EVERYTHING.find(
    ({ vessel: { particulars }, item }) => particulars.name === vessel && item.label === label,
  );
  if (!found) throw new Error(`no ${label} aboard ${vessel}`);
  return found;
}

const overdueAfter = ({ obligations }: Judged, ruleId: string, duty?: string): string | null => {
  const found = obligations.find((each) => each.ruleId === ruleId && (duty === undefined || each.duty === duty));
  return found?.outcome.kind === 'dated' ? formatDay(found.outcome.overdueAfter) : null;
};

const onText = (day: Day) => formatDay(day);

test('a raft was replaced: the old one’s plate and services are kept, and only the new one’s count', () => {
  const raft = aboard('Samphire', 'Liferaft, coachroof');
  const plates = raft.item.facts.filter(({ fact }) => fact === 'manufactured').map(({ on }) => on);
  expect(plates).toHaveLength(2);
  expect(raft.item.facts.filter(({ fact }) => fact === 'replaced')).toHaveLength(1);
  expect(new Set(standings(raft, TODAY))).toEqual(new Set(['in_date']));
  expect(raft.obligations[0]?.explanation.setAside.some(({ why }) => why.includes('what was replaced'))).toBe(true);
});

test('a failed service resets nothing: the raft is late since the year after the last one that passed', () => {
  const raft = aboard('Tansy', 'Liferaft, coachroof');
  expect(raft.item.facts.at(-1)).toMatchObject({ fact: 'serviced', outcome: 'failed' });
  expect(overdueAfter(raft, 'raft-solas')).toBe('2026-10-17');
});

test('a corrected date: the wrong year is struck out, and the raft turns out to be late', () => {
  const raft = aboard('Milkwort', 'Liferaft, coachroof');
  const [, wrong, right] = raft.item.facts;
  expect(right?.strikesOut).toBe(wrong);
  expect(right?.on.slice(4)).toBe(wrong?.on.slice(4));
  expect(overdueAfter(raft, 'raft-solas')).toBe(wrong?.on);
  expect(wrong && right && wrong.learnedOn < right.learnedOn).toBe(true);
});

test('a lost certificate leaves the owner’s word and a year', () => {
  const [, said] = aboard('Sea Lavender', 'Liferaft, coachroof').item.facts;
  expect(said).toMatchObject({ fact: 'serviced', on: '2025', evidence: 'owner_statement', doneBy: null });
});

test('a raft serviced by the yard is no serviced raft', () => {
  const raft = aboard('Svartskjold', 'Liferaft, foredeck');
  expect(raft.item.facts.at(-1)).toMatchObject({ fact: 'serviced', outcome: 'passed', doneBy: { capacity: 'yard' } });
  expect(overdueAfter(raft, 'raft-solas')).toBe('2026-07-25');
});

test('an extinguisher serviced by the crew counts from the technician’s last visit', () => {
  expect(overdueAfter(aboard('Drover', 'Extinguisher 2 kg powder, console'), 'fe-imo', 'service')).toBe('2026-08-25');
});

test('an extension on record holds a raft in date past its twelve months', () => {
  const raft = aboard('Gamle Erik', 'Liferaft, foredeck');
  const solas = raft.obligations.find(({ ruleId }) => ruleId === 'raft-solas');
  expect(solas?.outcome.kind === 'dated' && solas.outcome.dueOn < TODAY).toBe(true);
  expect(standings(raft, TODAY)).not.toContain('overdue');
});

test('an extinguisher past its withdrawal age is still aboard, serviced and overdue', () => {
  const old = aboard('Long Division', 'Extinguisher 2 kg powder, galley');
  const withdrawal = old.obligations.find(({ action }) => action.kind === 'withdraw');
  expect(withdrawal && standings({ obligations: [withdrawal] }, TODAY)).toEqual(['overdue']);
  expect(
    old.item.facts.filter(({ fact, outcome }) => fact === 'serviced' && outcome === 'passed').length,
  ).toBeGreaterThan(1);
});

test('an extinguisher that was withdrawn has no obligations', () => {
  const out = aboard('Lovage', 'Extinguisher 2 kg CO2, by the engine hatch');
  expect(out.item.facts.at(-1)?.fact).toBe('withdrawn');
  expect(out.obligations).toEqual([]);
});

test('a rig without any date is unknown, though it was looked over', () => {
  const rig = aboard('Tyttebær', 'Standing rigging, wire');
  expect(rig.item.facts.map(({ fact }) => fact)).toEqual(['inspected']);
  expect(standings(rig, TODAY)).toEqual(['in_date', 'unknown']);
});

test.each([
  ['Overfall', 'Hand flares, grab bag', 'pyro-osr'],
  ['Silverweed', 'Hand flares, cockpit locker', 'pyro-solas'],
  ['Quiet Money', 'Hand flares, grab bag', 'pyro-us-rec'],
])('the flares of %s ran out with last month', (vessel, label, rule) => {
  expect(overdueAfter(aboard(vessel, label), rule)).toBe(onText(endOfMonth(addMonths(TODAY, -1))));
});

test.each(['Plain Sailing', 'Eyebright', 'Drivved'])('the gas hose of %s is about to be due', (vessel) => {
  expect(overdueAfter(aboard(vessel, 'Gas hose, cooker'), 'lpg-hose')).toBe(onText(addDays(TODAY, 18)));
});

test('a print beats the years since fitting where it comes first', () => {
  const hose = aboard('Sea Campion', 'Gas hose, cooker');
  expect(hose.obligations[0]?.explanation.binds?.limit).toBe('the date printed on it');
});

test.each([
  ['a gas hose that the owner fitted', 'Anne Sofie', 'Gas hose, cooker', /fitted by/],
  ['two prints on a hose that disagree', 'Maren', 'Gas hose, cooker', /More than one/],
  ['a flare stamped for longer than is allowed', 'Second Thoughts', 'Hand flares, grab bag', /latest stamp allowed/],
])('%s is taken with a doubt', (_what, vessel, label, words) => {
  expect(
    aboard(vessel, label)
      .obligations.flatMap(({ explanation }) => explanation.doubts)
      .join(' '),
  ).toMatch(words);
});

test('an inspection that did not reach the masthead is no inspection', () => {
  const rig = aboard('Saxifrage', 'Standing rigging, wire');
  expect(rig.item.facts.some(({ outcome }) => outcome === 'partly')).toBe(true);
  expect(overdueAfter(rig, 'rig-wire-insp', 'inspection')).toBe('2026-04-25');
});

test('a year stamped on a disposable extinguisher takes it out with the twelfth year after', () => {
  const label = 'Extinguisher 1 kg powder, companionway';
  expect(overdueAfter(aboard('Second Thoughts', label), 'fe-us-disp')).toBe('2026-12-31');
});

test('a thing that was moved keeps its dates', () => {
  const foam = aboard('Angelica', 'Extinguisher 2 l foam, forecabin');
  expect(foam.item.facts.at(-1)?.fact).toBe('moved');
  expect(standings(foam, TODAY)).not.toContain('unknown');
});

test('many dates are known only to the month or the year', () => {
  const dates = EVERYTHING.flatMap(({ item }) => item.facts.map(({ on }) => on.length));
  expect(dates.filter((length) => length === 7).length).toBeGreaterThan(200);
  expect(dates.filter((length) => length === 4).length).toBeGreaterThan(50);
});
