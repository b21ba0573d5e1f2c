import { randomBytes } from 'node:crypto';
import { recompute } from '@garboard/actions/upkeep/recompute.ts';
import { findOrganisationsByName } from '@garboard/db/organisation/organisations.ts';
import { listOwnRules } from '@garboard/db/rule/own-rules.ts';
import { countAnswers } from '@garboard/db/safety-notice/count-answers.ts';
import { listNotices } from '@garboard/db/safety-notice/notices.ts';
import { inOrganisation, wholeFleet } from '@garboard/db/scope.ts';
import { MATTER_SOURCES } from '@garboard/domain/finding/matter.ts';
import { STATES } from '@garboard/domain/finding/next-state.ts';
import { pools } from '@garboard/tests/support/database.ts';
import { reportFigure, size } from '@garboard/tests/support/long.ts';
import { beforeAll, describe, expect, test } from 'vitest';
import { files } from '../../tests/src/support/files.ts';
import { DEMO_ORGANISATIONS, seedFleets } from './seed-fleets.ts';
import { comparable, readBack } from './testing/read-back.ts';

/** Seeding shares its machine with whatever else runs. */
const PATIENCE = 10 * 60_000;

/** Looked at twice: one of them in every run, all in the long one. */
const AGAIN = size(['Wrackholm Yachts'], [...DEMO_ORGANISATIONS]);

async function layOut(now: Date, only: readonly string[] = DEMO_ORGANISATIONS) {
  const suffix = ` ${randomBytes(4).toString('hex')}`;
  const lines: string[] = [];
  const start = performance.now();
  await seedFleets({ pools, files, only }, now, (line) => lines.push(line), suffix);
  const seconds = (performance.now() - start) / 1000;
  const organisations = await Promise.all(only.map((name) => findOrganisationsByName(pools.owner, `${name}${suffix}`)));
  const ids = organisations.map(([found]) => found?.id ?? '');
  const vessels = [];
  for (const id of ids) vessels.push(await readBack(pools.app, id));
  return { ids, vessels, lines: lines.map((line) => line.replace(suffix, '')), seconds };
}

/** A leap day; the last day of a year in the long run too. */
describe.each(['2028-02-29', '2026-12-31'].slice(0, size(1, 2)))('laid out on %s', (day) => {
  let early: Awaited<ReturnType<typeof layOut>>;
  let late: Awaited<ReturnType<typeof layOut>>;

  beforeAll(async () => {
    early = await layOut(new Date(`${day}T00:20:00Z`));
    late = await layOut(new Date(`${day}T22:40:00Z`), AGAIN);
    reportFigure('three demo fleets laid out in', `${early.seconds.toFixed(1)} s`);
  }, PATIENCE);

  test('three organisations have the promised sizes, and each says so', () => {
    expect(early.vessels.map((fleet) => fleet.length)).toEqual([27, 40, 12]);
    expect(early.lines.toSorted()).toEqual([
      'Saltern Reach Sailing School: 27 vessels',
      'Tangskjær Boatyard: 40 vessels',
      'Wrackholm Yachts: 12 vessels',
    ]);
  });

  test('the same day gives the same data, whatever the hour: particulars, facts, due dates, reasoning', () => {
    const other = late.vessels.flat();
    const ours = early.vessels.filter((_, index) => AGAIN.includes(DEMO_ORGANISATIONS[index] ?? '')).flat();
    const differing = ours.filter((vessel, index) => comparable(vessel) !== comparable(other[index]));
    expect(differing.map(({ name }) => name)).toEqual([]);
    expect(other).toHaveLength(size(12, 79));
  });

  test('stored obligations and counts equal what the facts say', async () => {
    for (const id of early.ids)
      expect(await recompute(pools.app, id)).toMatchObject({ obligations: 0, findings: 0, days: 0 });
  });

  test('findings stand in every state, and the one due list has something of every source', async () => {
    const states = new Set<string>();
    const sources = new Set<string>();
    for (const id of early.ids)
      await inOrganisation(pools.app, wholeFleet(id), async (tx) => {
        const found = await tx.selectFrom('finding').select('state').distinct().execute();
        const waiting = await tx.selectFrom('matter').select('source').distinct().execute();
        for (const { state } of found) states.add(state);
        for (const { source } of waiting) sources.add(source);
      });
    expect([...states].sort()).toEqual([...STATES].sort());
    expect([...sources].sort()).toEqual([...MATTER_SOURCES].sort());
  });

  test('each fleet has a rule of its own that gives dates, one with a version in force and one planned', async () => {
    const rules = await Promise.all(
      early.ids.map((id) => inOrganisation(pools.app, wholeFleet(id), (tx) => listOwnRules(tx))),
    );
    const begun = rules.map((ours) => ours.map(({ versions }) => versions.map(({ changeId }) => changeId !== null)));
    expect(begun).toEqual([[[true, true]], [[true]], [[true, false]]]);
    for (const fleet of early.vessels) {
      const own = fleet.flatMap(({ items }) => items.flatMap(({ obligations }) => obligations));
      expect(own.filter(({ scheme }) => scheme === 'own').length).toBeGreaterThan(5);
    }
  });

  test('a correction names the fact that it strikes out, and both stay on record', () => {
    const raft = early.vessels
      .flat()
      .find(({ name }) => name === 'Milkwort')
      ?.items.find(({ kind }) => kind === 'liferaft');
    const wrong = raft?.facts.find(({ struckOutBy }) => struckOutBy !== null);
    const right = raft?.facts.find(({ corrects }) => corrects !== null);
    expect(right).toMatchObject({ id: wrong?.struckOutBy, corrects: wrong?.id });
  });

  test('the makers’ notices are there in every state, with things that wait, that must be looked at and that were answered', async () => {
    const states = [];
    for (const id of early.ids)
      states.push(
        await inOrganisation(pools.app, wholeFleet(id), async (tx) => {
          const { rows } = await listNotices(tx, { limit: 9 });
          const counts = await countAnswers(
            tx,
            rows.map((each) => each.id),
          );
          return rows.map(({ id: each, withdrawn }) => ({ ...counts(each), withdrawn: withdrawn !== null }));
        }),
      );
    const [school, yard, charter] = states;
    expect(school).toEqual([{ affected: 0, mayBeAffected: 0, answered: expect.any(Number), withdrawn: false }]);
    expect(school?.[0]?.answered).toBeGreaterThan(0);
    expect(yard).toHaveLength(2);
    expect(charter?.map(({ withdrawn }) => withdrawn)).toEqual([false, true]);
    for (const open of [yard?.[0], charter?.[0]]) {
      expect(open?.answered).toBeGreaterThan(0);
      expect((open?.affected ?? 0) + (open?.mayBeAffected ?? 0)).toBeGreaterThan(1);
    }
  });

  test('what was withdrawn is marked so, and nothing else is', () => {
    const withdrawn = early.vessels.flat().flatMap(({ items }) => items.filter((item) => item.withdrawn));
    expect(withdrawn.map(({ label }) => label)).toEqual(['Extinguisher 2 kg CO2, by the engine hatch']);
  });

  test('facts were learned over years, one after the other, and the last before today', () => {
    const items = early.vessels.flat().flatMap((vessel) => vessel.items);
    for (const { createdAt, facts } of items) {
      const learned = [createdAt, ...facts.map(({ recordedAt }) => recordedAt)];
      expect(new Set(learned).size).toBe(learned.length);
      expect(learned.toSorted()).toEqual(learned);
    }
    const learned = items.flatMap(({ facts }) => facts.map(({ recordedAt }) => recordedAt)).toSorted();
    expect(learned.filter((each) => each >= day)).toEqual([]);
    expect(new Set(learned.map((each) => each.slice(0, 4))).size).toBeGreaterThan(3);
  });
});
