/** Wire, rod and chainplates: fitted once in many years, looked at every year. */
import { addMonths, type Day } from '@garboard/domain/calendar/day.ts';
import { type Lot, rounds } from '../history.ts';
import { fortuneOf, type Logbook } from '../logbook.ts';
import type { FactPlan, ItemPlan } from '../plan.ts';
import { act, certified } from '../record.ts';
import { fitted } from './fitted.ts';
import { lotOf, thing } from './thing.ts';

type Rig = { readonly lifeMonths?: number; readonly rigger?: boolean };

/** `rigger`: somebody who looks at it every second year. `lifeMonths`: how long this owner keeps wire. */
export function wireRigging(log: Logbook, label: string, { lifeMonths = 120, rigger = true }: Rig = {}): ItemPlan {
  const lot = lotOf(log, label);
  const { facts, since } = fitted(lot, { months: lifeMonths, by: log.people.rigger });
  return thing('standing_rigging_wire', label, [
    ...facts,
    ...looks(lot, since),
    ...(rigger ? inspections(lot, since) : []),
  ]);
}

/** Re-headed at the maker's five years. */
export function rodRigging(log: Logbook, label: string): ItemPlan {
  const lot = lotOf(log, label);
  const { facts, since } = fitted(lot, { months: 168, by: log.people.rigger });
  const overhauls = rounds({ ...lot, fortune: 'in_date' }, 60, since);
  const reheaded = overhauls.map((day) => act(log, 'overhauled', day, certified(log.people.rigger, day)));
  const attributes = { makerIntervalMonths: 60, makerLifeMonths: 168 };
  return thing(
    'standing_rigging_rod',
    label,
    [...facts, ...looks(lot, since), ...inspections(lot, since), ...reheaded],
    { attributes },
  );
}

/** `everyMonths`: how often they are drawn and tested, where somebody has said so. */
export function chainplates(log: Logbook, label: string, everyMonths: number): ItemPlan {
  const lot = lotOf(log, label);
  const { facts, since } = fitted({ ...lot, fortune: 'in_date' }, { months: 360, by: log.people.yard });
  const attributes = lot.fortune === 'unknown' ? {} : { makerIntervalMonths: everyMonths };
  return thing('chainplate', label, [...facts, ...looks(lot, since), ...crackTests(lot, since, everyMonths)], {
    attributes,
  });
}

function crackTests({ log, random, fortune }: Lot, since: Day, everyMonths: number): FactPlan[] {
  if (since > addMonths(log.today, -everyMonths)) return [];
  const on = addMonths(log.careOn, fortune === 'late' ? -everyMonths : -12 * random.between(1, 6));
  return on > since ? [act(log, 'tested', on, { ...certified(log.people.rigger, on), test: 'crack_test' })] : [];
}

/** What nobody dated was looked at all the same. */
function looks(lot: Lot, since: Day): FactPlan[] {
  const fortune = lot.fortune === 'unknown' ? 'in_date' : lot.fortune;
  return rounds({ ...lot, fortune }, 12, since).map((day) =>
    act(lot.log, 'inspected', day, { test: 'visual', doneBy: lot.log.people.keeper }),
  );
}

/** Nobody calls a rigger to new wire. */
function inspections(lot: Lot, since: Day): FactPlan[] {
  const { log, random } = lot;
  if (since > addMonths(log.today, -48)) return [];
  const fortune = lot.fortune === 'in_date' ? fortuneOf(random, log.luck) : 'in_date';
  if (fortune === 'unknown') return [];
  const days = rounds({ ...lot, fortune }, 24, since);
  return days.map((day) => act(log, 'inspected', day, certified(log.people.rigger, day)));
}
