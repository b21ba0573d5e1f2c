/** Several years of surveys of one yacht: plain data in which every day and every fate is fixed already. */
import { addDays, type Day } from '@garboard/domain/calendar/day.ts';
import type { Craft } from '@garboard/domain/survey-visit/zones.ts';
import type { Boat } from '../fleets/boat.ts';
import { chanceOf, type Logbook } from '../logbook.ts';
import type { Random } from '../random.ts';
import { KNOWN, type Known } from './known-findings.ts';

/** What becomes of a finding after the visit that found it. */
export const FATES = [
  'verified',
  'verified',
  'verified',
  'came_back',
  'open',
  'open',
  'proposed',
  'planned',
  'in_hand',
  'reported',
  'deferred',
  'accepted',
  'entered_in_error',
  'seen_gone',
  'entered_twice',
] as const;
export type Fate = (typeof FATES)[number];

export type FindingPlan = { readonly known: Known; readonly visit: number; readonly fate: Fate; readonly yard: string };
export type SurveyPlan = {
  readonly today: Day;
  readonly craft: Craft;
  /** The days of the visits, the first first. */
  readonly days: readonly Day[];
  /** Whether the last of them is still being typed up. */
  readonly lastIsOpen: boolean;
  readonly surveyor: string;
  readonly currency: string;
  readonly findings: readonly FindingPlan[];
  /** The visit that could not look behind the lining, and the one that did; `null`: nobody has looked yet. */
  readonly lining: { readonly from: number; readonly until: number | null } | null;
  /** Asked of a rigger on the last visit, due so many days after it. */
  readonly riggerInDays: number | null;
  /** Moisture at each survey point, visit by visit; the first is the dry reference. */
  readonly moisture: readonly (readonly number[])[];
  /** Whether the surveyor photographs the same gauge at every visit. */
  readonly photographsGauge: boolean;
  /** Inside diameter of the gas locker's drain, measured on the last visit; `null`: she has no such locker. */
  readonly gasDrainMm: number | null;
};

export const POINTS = [
  'reference, topsides port',
  'port, frame 2',
  'port, frame 5',
  'starboard, frame 5',
  'rudder, port side',
] as const;

const YACHTS: readonly Boat['carries'][] = [
  'cruisingYacht',
  'sailingBoat',
  'visitingYacht',
  'trainingKetch',
  'racingBoat',
  'motorBoat',
];
const FEWEST = 3;
const MOST = 6;

/** `null`: a boat that nobody surveys. */
export function planSurvey(boat: Boat, log: Logbook, currency: string): SurveyPlan | null {
  if (!YACHTS.includes(boat.carries)) return null;
  const random = chanceOf(log, 'surveys');
  const days = daysOf(log, random);
  if (days.length === 0) return null;
  const last = days.length - 1;
  return {
    craft: boat.carries === 'motorBoat' ? 'motor_boat' : 'sailing_yacht',
    today: log.today,
    days,
    lastIsOpen: random.chance(0.12),
    surveyor: log.people.surveyor.name ?? 'Surveyor',
    currency,
    findings: findingsOf(boat, random, last).map((each) => ({ ...each, yard: log.people.yard.name ?? 'the yard' })),
    lining: random.chance(0.5) ? { from: 0, until: random.chance(0.4) ? last : null } : null,
    riggerInDays: boat.rig && random.chance(0.5) ? random.between(0, 90) : null,
    moisture: days.map((_, visit) => readingsOf(random, visit)),
    photographsGauge: random.chance(0.15),
    gasDrainMm: boat.carries === 'motorBoat' ? null : random.pick([12, 20, 25, 19]),
  };
}

/** The last some months ago, the others some nine months apart, or as near as her time on the register leaves room for. */
function daysOf({ today, enteredOn }: Logbook, random: Random): Day[] {
  const wanted = random.between(FEWEST, MOST);
  const last = addDays(today, -random.between(10, 150));
  const room = Math.floor((last - enteredOn - 2 * JITTER) / (FEWEST - 1));
  const apart = Math.min(random.between(215, 300), room);
  const days = Array.from({ length: wanted }, (_, back) =>
    addDays(last, -back * apart + (back === 0 ? 0 : random.between(-JITTER, JITTER))),
  );
  return days.filter((day) => day > enteredOn).reverse();
}

const JITTER = 8;

function findingsOf({ rig }: Boat, random: Random, last: number): Omit<FindingPlan, 'yard'>[] {
  const fits = KNOWN.filter(({ zone }) => rig !== null || (zone !== 'mast_and_rigging' && zone !== 'sails'));
  const chosen = new Set<Known>();
  const wanted = random.between(3, 8);
  while (chosen.size < wanted) chosen.add(random.pick(fits as [Known, ...Known[]]));
  return [...chosen].map((known) => ({ known, visit: random.between(0, last), fate: fateOf(known, random) }));
}

/** What cannot wait is not left: somebody mends it, or is about to. */
function fateOf({ urgency }: Known, random: Random): Fate {
  const fate = random.pick(FATES);
  const isLeft = fate === 'deferred' || fate === 'accepted';
  return urgency === 'before_use' && isLeft ? 'verified' : fate;
}

/** Relative readings: the points creep up from the dry reference, each at its own pace. */
function readingsOf(random: Random, visit: number): number[] {
  const dry = 12 + random.between(-1, 1);
  return [dry, ...POINTS.slice(1).map((_, point) => dry + 3 + point + visit * (point % 3) + random.between(-1, 1))];
}
