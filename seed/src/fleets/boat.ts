/** One line of a fleet's list, and what becomes of it: a place on the register and a logbook. */
import type { Identifiers, Particulars } from '@garboard/db/vessel/vessel-record.ts';
import { addDays, addMonths, type Day, formatDay } from '@garboard/domain/calendar/day.ts';
import type { SchemeId } from '@garboard/domain/rule/scheme.ts';
import type { Inventory } from '../equipment/inventories.ts';
import type { Logbook, Luck, People } from '../logbook.ts';
import { type Random, randomOf } from '../random.ts';

/** Ages in years, so that a fleet is as old whenever it is laid out. */
export type Boat = {
  readonly name: string;
  readonly type: string;
  readonly carries: Inventory;
  readonly ageYears: number;
  readonly lengthM: number;
  readonly material: string;
  readonly rig: string | null;
  readonly schemes: readonly SchemeId[];
  readonly homePort: string;
  readonly persons?: number;
  readonly beamM?: number;
  readonly draughtM?: number;
  /** By the year she is on record as built in. */
  readonly identifiers?: (builtYear: number) => Identifiers;
  readonly worth?: { readonly minor: number; readonly currency: string };
};

export type Setting = {
  readonly fleet: string;
  readonly timeZone: string;
  readonly currency: string;
  readonly season: { readonly from: string; readonly to: string };
  readonly today: Day;
  /** How long the register has been kept. */
  readonly keptMonths: number;
  readonly sheets: number;
  readonly people: People;
  readonly luck: Luck;
};

export function particularsOf(boat: Boat, { timeZone, today }: Setting): Particulars {
  const builtYear = yearOf(addMonths(today, -12 * boat.ageYears));
  return {
    name: boat.name,
    type: boat.type,
    builtYear,
    lengthOverallM: boat.lengthM,
    hullMaterial: boat.material,
    rig: boat.rig,
    beamM: boat.beamM ?? null,
    draughtM: boat.draughtM ?? null,
    waterlineLengthM: null,
    displacementKg: null,
    personsMax: boat.persons ?? null,
    identifiers: boat.identifiers?.(builtYear) ?? {},
    value: boat.worth ?? null,
    schemes: boat.schemes,
    timeZone,
    homePort: boat.homePort,
  };
}

/** Her own luck: some are looked after better than others. */
export function logbookOf(boat: Boat, { fleet, today, keptMonths, sheets, people, luck }: Setting): Logbook {
  const seed = `${fleet}/${boat.name}`;
  const random = randomOf(seed);
  const commissionedOn = addDays(addMonths(today, -12 * boat.ageYears), random.between(20, 60));
  const setUpOn = addDays(addMonths(today, -keptMonths), random.between(0, 9));
  return {
    seed,
    today,
    commissionedOn,
    enteredOn: setUpOn > commissionedOn ? setUpOn : addDays(commissionedOn, 14),
    careOn: addDays(today, -random.between(165, 255)),
    sheets,
    people,
    luck: luckOf(random, luck),
  };
}

function luckOf(random: Random, { late, soon, unknown }: Luck): Luck {
  const care = random.pick([0.4, 1, 1, 1.6]);
  return { late: Math.round(late * care), soon, unknown: Math.round(unknown * care) };
}

function yearOf(day: Day): number {
  return Number(formatDay(day).slice(0, 4));
}
