/** A sailing school: dinghies, small keelboats, safety boats and three yachts. */

import { extinguisher } from '../equipment/extinguishers.ts';
import { liferaft } from '../equipment/liferaft.ts';
import type { Logbook, People } from '../logbook.ts';
import type { EventPlan, SituationPlan } from '../plan.ts';
import { pastWithdrawal, servicedByTheCrew } from '../stories/fire.ts';
import { justExpired } from '../stories/flares.ts';
import { aboutToBeDue } from '../stories/gas-and-rig.ts';
import { extinguishersChecked } from '../stories/notices.ts';
import { extinguishersLookedAt } from '../stories/own-rules.ts';
import type { Boat } from './boat.ts';
import type { FleetBook } from './plan-fleet.ts';
import { SCHOOL_BOATS } from './school-boats.ts';
import * as doing from './situations.ts';

const PEOPLE: People = {
  keeper: { name: 'Wilf Pennymoor, bosun', capacity: 'crew' },
  yard: { name: 'Saltern Slip', capacity: 'yard' },
  rigger: { name: 'Ada Thornquay, rigger', capacity: 'rigger' },
  gasEngineer: { name: 'Brannock Gas Afloat', capacity: 'gas_engineer' },
  engineer: { name: 'Josan Fettle, engineer', capacity: 'marine_engineer' },
  raftStation: { name: 'Mole End Raft Loft', capacity: 'liferaft_service_station' },
  fireTechnician: { name: 'Ember & Lowe Fire', capacity: 'fire_equipment_technician' },
  surveyor: { name: 'Ruth Callowmere, surveyor', capacity: 'surveyor' },
};

export const SCHOOL: FleetBook = {
  setting: {
    fleet: 'Saltern Reach Sailing School',
    timeZone: 'Europe/London',
    currency: 'GBP',
    season: { from: '04-01', to: '10-15' },
    keptMonths: 34,
    sheets: 2,
    people: PEOPLE,
    luck: { late: 10, soon: 8, unknown: 6 },
  },
  boats: SCHOOL_BOATS,
  doing: whatSheDoes,
  diary,
  notices: (today, people) => [extinguishersChecked(today, people)],
  ownRules: (today) => [extinguishersLookedAt(today)],
  stories: {
    Overfall: (log) => [justExpired(log, 'Hand flares, grab bag', 2)],
    Collie: (log) => [extinguisher(log, 'portable_extinguisher_dry_powder', CONSOLE)],
    Drover: (log) => [servicedByTheCrew(log, CONSOLE)],
    Shepherd: (log) => [extinguisher(log, 'portable_extinguisher_dry_powder', CONSOLE)],
    'Plain Sailing': (log) => [
      aboutToBeDue(log, 'Gas hose, cooker'),
      liferaft(log, RAFT, { standard: 'iso_9650', everyMonths: 36 }),
    ],
    'Second Helping': (log) => [liferaft(log, RAFT, { standard: 'solas' })],
    'Long Division': (log) => [
      pastWithdrawal(log, 'Extinguisher 2 kg powder, galley'),
      liferaft(log, RAFT, { standard: 'iso_9650' }),
    ],
  },
};

const CONSOLE = 'Extinguisher 2 kg powder, console';
const RAFT = 'Liferaft, 8 persons, pushpit';

function whatSheDoes(boat: Boat, log: Logbook, index: number): SituationPlan[] {
  const usual = boat.type.endsWith('dinghy') ? doing.ON_HER_TROLLEY : doing.SAILING;
  const before = doing.lastYear(log, usual, doing.LAID_UP_ASHORE);
  if (boat.carries === 'safetyBoat' || STILL_SAILING.includes(boat.name)) return before;
  const now = { Sheepshank: doing.IN_THE_SHED, Granny: doing.OUT_OF_SERVICE, 'Spring Tide': doing.MAST_DOWN }[
    boat.name
  ];
  return [...before, doing.since(log, 14 + (index % 6) * 5, now ?? doing.LAID_UP_ASHORE)];
}

const STILL_SAILING: readonly string[] = ['Ebb', 'Flood', 'Plain Sailing', 'Second Helping'];

function diary(boat: Boat, log: Logbook): EventPlan[] {
  if (boat.name === 'Sheepshank')
    return [doing.happened(log, 'grounding', 26, 'Drove onto the slip wall; the stem is split.')];
  if (boat.name === 'Overfall') return [doing.planned(log, 'race_start', 128, 'First race of the series.')];
  if (boat.carries !== 'cruisingYacht') return [];
  return [
    doing.happened(log, 'inspection', 240),
    doing.planned(log, 'inspection', 118, 'Certifying authority, before the first course.'),
  ];
}
