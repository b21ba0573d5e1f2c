/** A charter operator: twelve yachts, inspected before every season. */
import { liferaft } from '../equipment/liferaft.ts';
import type { Logbook, People } from '../logbook.ts';
import type { EventPlan, ItemPlan, SituationPlan } from '../plan.ts';
import { moved, withdrawn } from '../stories/fire.ts';
import { justExpired } from '../stories/flares.ts';
import { aboutToBeDue, partlyInspected, printedEarlier } from '../stories/gas-and-rig.ts';
import { hosesBadlyCrimped, raftsTakenBack } from '../stories/notices.ts';
import { hosesOfTheInsurer } from '../stories/own-rules.ts';
import { correctedService, failedService, lostCertificate, replacedRaft } from '../stories/rafts.ts';
import type { Boat } from './boat.ts';
import { CHARTER_BOATS } from './charter-boats.ts';
import type { FleetBook } from './plan-fleet.ts';
import * as doing from './situations.ts';

const PEOPLE: People = {
  keeper: { name: 'Morag Inverdale, base manager', capacity: 'crew' },
  yard: { name: 'Wrackholm Slip & Store', capacity: 'yard' },
  rigger: { name: 'Donnan Rigging', capacity: 'rigger' },
  gasEngineer: { name: 'Calum Brackenridge, gas engineer', capacity: 'gas_engineer' },
  engineer: { name: 'Ishbel Corran, engineer', capacity: 'marine_engineer' },
  raftStation: { name: 'Firth End Raft Station', capacity: 'liferaft_service_station' },
  fireTechnician: { name: 'Tam Hearthstone, fire equipment', capacity: 'fire_equipment_technician' },
  surveyor: { name: 'Effie Strandlow, surveyor', capacity: 'surveyor' },
};

export const CHARTER: FleetBook = {
  setting: {
    fleet: 'Wrackholm Yachts',
    timeZone: 'Europe/London',
    currency: 'GBP',
    season: { from: '04-01', to: '10-15' },
    keptMonths: 46,
    sheets: 2,
    people: PEOPLE,
    luck: { late: 22, soon: 9, unknown: 5 },
  },
  boats: CHARTER_BOATS,
  doing: whatSheDoes,
  diary,
  notices: (today, people) => [hosesBadlyCrimped(today, people), raftsTakenBack(today)],
  ownRules: (today) => [hosesOfTheInsurer(today)],
  stories: {
    Samphire: (log) => [replacedRaft(log, RAFT)],
    Tansy: (log) => [failedService(log, RAFT)],
    Milkwort: (log) => [correctedService(log, RAFT)],
    Eyebright: (log) => [solasRaft(log), aboutToBeDue(log, 'Gas hose, cooker')],
    Lovage: (log) => [solasRaft(log), withdrawn(log, 'Extinguisher 2 kg CO2, by the engine hatch')],
    Saxifrage: (log) => [solasRaft(log), partlyInspected(log, 'Standing rigging, wire')],
    Silverweed: (log) => [solasRaft(log), justExpired(log, 'Hand flares, cockpit locker', 6)],
    'Sea Campion': (log) => [solasRaft(log), printedEarlier(log, 'Gas hose, cooker')],
    'Bog Myrtle': (log) => [liferaft(log, RAFT, { standard: 'iso_9650', everyMonths: 36, ageMonths: 47 })],
    'Sweet Gale': (log) => [liferaft(log, RAFT, { standard: 'iso_9650', everyMonths: 36, ageMonths: 47 })],
    Angelica: (log) => [
      liferaft(log, RAFT, { standard: 'solas', ageMonths: 128 }),
      moved(log, 'Extinguisher 2 l foam, forecabin'),
    ],
    'Sea Lavender': (log) => [lostCertificate(log, RAFT)],
  },
};

const RAFT = 'Liferaft, coachroof';
const solasRaft = (log: Logbook): ItemPlan => liferaft(log, RAFT, { standard: 'solas' });

const AFLOAT_AND_SAILING: readonly string[] = ['Sweet Gale', 'Angelica'];
const LEFT_AFLOAT: readonly string[] = ['Lovage', 'Sea Campion', 'Bog Myrtle'];

function whatSheDoes(boat: Boat, log: Logbook, index: number): SituationPlan[] {
  const before = doing.lastYear(log, doing.SAILING, index % 3 === 0 ? doing.LAID_UP_AFLOAT : doing.LAID_UP_ASHORE);
  if (AFLOAT_AND_SAILING.includes(boat.name)) return before;
  const ashore = boat.name === 'Saxifrage' ? doing.MAST_DOWN : doing.LAID_UP_ASHORE;
  return [...before, doing.since(log, 12 + index * 3, LEFT_AFLOAT.includes(boat.name) ? doing.LAID_UP_AFLOAT : ashore)];
}

/** Inspections come in the weeks before the first charter, a few boats at a time. */
function diary(boat: Boat, log: Logbook, index: number): EventPlan[] {
  const inspectedAgo = log.today - log.careOn - 5;
  const usual = [
    doing.happened(log, 'inspection', inspectedAgo),
    doing.planned(log, 'liferaft_service', 96 + (index % 4) * 2, 'The station fetches the rafts from the base.'),
    doing.planned(log, 'inspection', 104 + index * 2, 'Before the first charter.'),
  ];
  if (boat.name === 'Saxifrage')
    return [...usual, doing.happened(log, 'lightning', 71, 'Struck at anchor; instruments dead.')];
  if (boat.name === 'Sea Lavender')
    return [...usual, doing.happened(log, 'grounding', 139, 'Touched on the bar at half tide, no water in the bilge.')];
  return usual;
}
