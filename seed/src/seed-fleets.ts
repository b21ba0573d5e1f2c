/** Three invented fleets to look around in, as they would be on the day on which they are laid out. */
import { createOrganisation } from '@garboard/actions/organisation/administer.ts';
import { setSeason } from '@garboard/actions/organisation/set-season.ts';
import type { Files } from '@garboard/blobs/files.ts';
import type { Pools } from '@garboard/db/pool.ts';
import type { Day } from '@garboard/domain/calendar/day.ts';
import { dayInZone } from '@garboard/domain/calendar/day-in-zone.ts';
import { CHARTER } from './fleets/charter.ts';
import { type FleetBook, planFleet } from './fleets/plan-fleet.ts';
import { SCHOOL } from './fleets/school.ts';
import { YARD } from './fleets/yard.ts';
import { layOutVessel } from './lay-out.ts';
import { layOutNotices } from './lay-out-notices.ts';
import { layOutOwnRules } from './lay-out-own-rules.ts';
import { morningOf, officeHours, wanted } from './office.ts';
import type { VesselPlan } from './plan.ts';
import { rememberWhatWasSeen } from './visits/take-photograph.ts';

const BOOKS: readonly FleetBook[] = [SCHOOL, YARD, CHARTER];

export const DEMO_ORGANISATIONS: readonly string[] = BOOKS.map(({ setting }) => setting.fleet);

/** Where they are laid out. */
export type Ground = {
  readonly pools: Pools;
  readonly files: Files;
  /** The names of those that are laid out; absent: all of them. */
  readonly only?: readonly string[];
};

/** Says a line when a fleet is complete. `suffix` goes behind each organisation's name. Rejects once `asked` to stop. */
export async function seedFleets(
  { pools, files, only = DEMO_ORGANISATIONS }: Ground,
  now: Date,
  say: (line: string) => void,
  suffix = '',
  asked?: AbortSignal,
): Promise<void> {
  const camera = rememberWhatWasSeen(files);
  await Promise.all(
    BOOKS.filter(({ setting }) => only.includes(setting.fleet)).map(async (book) => {
      const { name, timeZone, season, vessels, notices, ownRules } = planFleet(
        book,
        dayInZone(now, book.setting.timeZone),
      );
      const firstDay = Math.min(...vessels.map(({ enteredOn }) => enteredOn)) as Day;
      const organisation = await createOrganisation(pools.owner, {
        name: `${name}${suffix}`,
        timeZone,
        now: morningOf(firstDay),
      });
      if (!organisation.ok) throw new Error(`demo fleets: ${JSON.stringify(organisation.failure)}`);
      const opening = officeHours(pools.app, organisation.value.id)(firstDay);
      wanted(await setSeason(opening, { season, expectedVersion: 1 }));
      const ground = { db: pools.app, files: camera, organisationId: organisation.value.id };
      await layOutVessels(ground, vessels, asked);
      await layOutNotices(pools.app, organisation.value.id, notices);
      await layOutOwnRules(pools.app, organisation.value.id, ownRules, now);
      say(`${name}${suffix}: ${vessels.length} vessels`);
    }),
  );
}

/** Two writers of one organisation often wait for the same day's count, so more of them gain nothing. */
const ABREAST = 2;

async function layOutVessels(
  ground: Parameters<typeof layOutVessel>[0],
  vessels: readonly VesselPlan[],
  asked?: AbortSignal,
): Promise<void> {
  const waiting = vessels.values();
  const lane = async () => {
    for (const vessel of waiting) {
      asked?.throwIfAborted();
      await layOutVessel(ground, vessel);
    }
  };
  await Promise.all(Array.from({ length: ABREAST }, lane));
}
