/** A yard: other people's boats, most of them ashore, with what their owners could say of them. */

import type { Logbook, People } from '../logbook.ts';
import type { EventPlan, SituationPlan } from '../plan.ts';
import { outWithTheYear, servicedByTheCrew } from '../stories/fire.ts';
import { justExpired, stampedTooLate } from '../stories/flares.ts';
import { aboutToBeDue, fittedByTheOwner, twoPrints, undatedRig } from '../stories/gas-and-rig.ts';
import { extinguishersChecked, hosesBadlyCrimped } from '../stories/notices.ts';
import { hosesFelt } from '../stories/own-rules.ts';
import { extendedRaft, servicedByTheYard } from '../stories/rafts.ts';
import type { Boat } from './boat.ts';
import type { FleetBook } from './plan-fleet.ts';
import * as doing from './situations.ts';
import { YARD_BOATS } from './yard-boats.ts';

const PEOPLE: People = {
  keeper: { name: 'the owner', capacity: 'owner_or_skipper' },
  yard: { name: 'Tangskjær Boatyard', capacity: 'yard' },
  rigger: { name: 'Oddvar Sandrem, rigger', capacity: 'rigger' },
  gasEngineer: { name: 'Liv Tangerud, gas engineer', capacity: 'gas_engineer' },
  engineer: { name: 'Tangskjær Boatyard, engine shop', capacity: 'yard' },
  raftStation: { name: 'Bruhavn Raft Service', capacity: 'liferaft_service_station' },
  fireTechnician: { name: 'Gnistøy Fire Equipment', capacity: 'fire_equipment_technician' },
  surveyor: { name: 'Gro Ytrevoll, surveyor', capacity: 'surveyor' },
};

const GAS = 'Gas hose, cooker';
const RIG = 'Standing rigging, wire';
const RAFT = 'Liferaft, foredeck';

export const YARD: FleetBook = {
  setting: {
    fleet: 'Tangskjær Boatyard',
    timeZone: 'Europe/Oslo',
    currency: 'NOK',
    season: { from: '04-01', to: '10-15' },
    keptMonths: 14,
    sheets: 1,
    people: PEOPLE,
    luck: { late: 15, soon: 7, unknown: 11 },
  },
  boats: YARD_BOATS,
  doing: whatSheDoes,
  diary: ({ name }, log) => DIARIES[name]?.(log) ?? [],
  notices: (today, people) => [hosesBadlyCrimped(today, people), extinguishersChecked(today, people)],
  ownRules: (today) => [hosesFelt(today)],
  stories: {
    'Anne Sofie': (log) => [fittedByTheOwner(log, GAS)],
    Drivved: (log) => [aboutToBeDue(log, GAS)],
    Maren: (log) => [twoPrints(log, GAS)],
    Tyttebær: (log) => [undatedRig(log, RIG)],
    Hildegunn: (log) => [undatedRig(log, RIG)],
    'Second Thoughts': (log) => [
      stampedTooLate(log, 'Hand flares, grab bag', 4),
      outWithTheYear(log, 'Extinguisher 1 kg powder, companionway'),
    ],
    'Quiet Money': (log) => [justExpired(log, 'Hand flares, grab bag', 4)],
    'Gamle Erik': (log) => [extendedRaft(log, RAFT), servicedByTheCrew(log, 'Extinguisher 6 kg powder, engine room')],
    Svartskjold: (log) => [servicedByTheYard(log, RAFT)],
  },
};

const STILL_AFLOAT: readonly string[] = ['Havdis', 'Storegut', 'Gamle Erik', 'Vesle Kari'];
const MAST_DOWN: readonly string[] = ['Anne Sofie', 'Sølvpil', 'Solstreif', 'Kuling', 'Tverrsjø', 'Maren', 'Måneskinn'];
const IN_THE_SHED: readonly string[] = ['Hildegunn', 'Svartskjold', 'Taretroll', 'Knøtt', 'Brisling'];
const GIVEN_UP: readonly string[] = ['Kobbe', 'Krusning'];

function whatSheDoes({ name }: Boat, log: Logbook, index: number): SituationPlan[] {
  const before = doing.lastYear(log, doing.SAILING, doing.LAID_UP_ASHORE);
  if (STILL_AFLOAT.includes(name)) return before;
  if (GIVEN_UP.includes(name)) return [doing.since(log, 24 * 30 + index, doing.OUT_OF_SERVICE)];
  const hauledOut = doing.since(log, 62 - index, doing.LAID_UP_ASHORE);
  const soonAfter = 55 - index;
  if (MAST_DOWN.includes(name)) return [...before, hauledOut, doing.since(log, soonAfter, doing.MAST_DOWN)];
  if (IN_THE_SHED.includes(name)) return [...before, hauledOut, doing.since(log, soonAfter, doing.IN_THE_SHED)];
  return [...before, hauledOut];
}

const DIARIES: Readonly<Record<string, (log: Logbook) => EventPlan[]>> = {
  Taretroll: (log) => [doing.happened(log, 'structural_repair', 30, 'Plating renewed under the engine.')],
  Sjøgress: (log) => [doing.happened(log, 'change_of_owner', 86)],
  Rundkast: (log) => [doing.happened(log, 'gale', 68, 'Lay against the quay for a night.')],
  'Gamle Erik': (log) => [doing.planned(log, 'inspection', 122, 'Before she is launched with trainees.')],
  Kuling: (log) => [doing.planned(log, 'race_start', 164)],
};
