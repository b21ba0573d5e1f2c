/** Portable extinguishers, the automatic one beside the engine, and the blanket. */
import type { Day } from '@garboard/domain/calendar/day.ts';
import { addDays, addMonths } from '@garboard/domain/calendar/day.ts';
import type { TestKind } from '@garboard/domain/item/fact.ts';
import type { ItemKindId } from '@garboard/domain/item/item-kind.ts';
import { type Lot, rounds } from '../history.ts';
import { chanceOf, type Logbook } from '../logbook.ts';
import type { FactPlan, ItemPlan } from '../plan.ts';
import { act, certified, dateText, stamp } from '../record.ts';
import { lotOf, type Particular, thing } from './thing.ts';

type Portable = Extract<ItemKindId, `portable_extinguisher_${string}`>;

/** Monthly looks, a technician every year, and the longer service every fifth. */
export function extinguisher(log: Logbook, kind: Portable, label: string, more: Particular = {}): ItemPlan {
  const lot = lotOf(log, label);
  const age = Math.min(lot.random.between(24, 110), monthsSince(log.commissionedOn, log.today));
  const madeOn = addMonths(log.today, -age);
  const facts = [stamp(log, madeOn), ...services(lot, kind, madeOn), ...monthlyLooks(lot)];
  return thing(kind, label, facts, { serialNumber: serialOf(lot, madeOn), ...more });
}

/** No service: it is read on the label, looked at, and thrown away. */
export function disposable(log: Logbook, label: string, more: Particular = {}): ItemPlan {
  const lot = lotOf(log, label);
  const age = Math.min(lot.random.between(12, 110), monthsSince(log.commissionedOn, log.today));
  const facts = lot.fortune === 'unknown' ? [] : [stamp(log, addMonths(log.today, -age))];
  return thing('portable_extinguisher_dry_powder_disposable', label, [...facts, ...monthlyLooks(lot)], more);
}

export function engineSpaceExtinguisher(log: Logbook, label: string): ItemPlan {
  const lot = lotOf(log, label);
  const madeOn = addMonths(log.today, -Math.min(60, monthsSince(log.commissionedOn, log.today)));
  const weighed = visits(lot, madeOn).map((day) =>
    act(log, 'serviced', day, certified(log.people.fireTechnician, day)),
  );
  const attributes = { makerLifeMonths: 120 };
  return thing('engine_space_extinguisher', label, [stamp(log, madeOn), ...weighed, ...monthlyLooks(lot)], {
    attributes,
  });
}

export function fireBlanket(log: Logbook, label: string): ItemPlan {
  const lot = lotOf(log, label);
  const fittedOn = addMonths(
    log.today,
    -Math.min(lot.random.between(20, 80), monthsSince(log.commissionedOn, log.today)),
  );
  const looks = rounds(lot, 12, fittedOn).map((day) => act(log, 'inspected', day, { doneBy: log.people.keeper }));
  const attributes = lot.fortune === 'unknown' ? {} : { makerLifeMonths: 84 };
  return thing(
    'fire_blanket',
    label,
    [act(log, 'installed', fittedOn, { on: dateText(fittedOn, 'month') }), ...looks],
    { attributes },
  );
}

/** The technician does every extinguisher aboard in one visit, but for the one that was not to be found. */
function visits({ log, fortune }: Lot, since: Day): readonly Day[] {
  return rounds({ log, fortune, random: chanceOf(log, 'fire round') }, 12, since, 3);
}

function services(lot: Lot, kind: Portable, madeOn: Day): FactPlan[] {
  if (lot.fortune === 'unknown') return [];
  const { log } = lot;
  const days = visits(lot, madeOn);
  const longer = kind === 'portable_extinguisher_co2' ? undefined : days.find((day) => day >= addMonths(madeOn, 60));
  return days.map((day) => {
    const test: TestKind | null = day === longer ? 'extended_service' : null;
    return act(log, 'serviced', day, { ...certified(log.people.fireTechnician, day), test });
  });
}

/** The last ticks on the keeper's tag. The late ones have been missed on a round. */
function monthlyLooks({ log, random, fortune }: Lot): FactPlan[] {
  const last = addDays(log.today, -(fortune === 'late' ? random.between(35, 60) : random.between(3, 22)));
  return [addMonths(last, -1), last].map((day) =>
    act(log, 'inspected', day, { test: 'visual', doneBy: log.people.keeper }),
  );
}

function serialOf({ random }: Lot, madeOn: Day): string {
  return `${dateText(madeOn, 'year').slice(2)}-${random.between(10_000, 99_999)}`;
}

function monthsSince(from: Day, to: Day): number {
  return Math.floor((to - from) / 30.5);
}
