/** What a vessel has been doing since she was put on the register, and what is in her diary. */
import { addDays, formatDay } from '@garboard/domain/calendar/day.ts';
import type { VesselEventKind } from '@garboard/domain/vessel/situation.ts';
import { type Logbook, learnedFrom } from '../logbook.ts';
import type { EventPlan, SituationPlan } from '../plan.ts';

type Doing = Omit<SituationPlan, 'from' | 'learnedOn'>;

export const SAILING: Doing = { place: 'afloat', use: 'in_commission', dismantled: false, underRepair: false };
/** Boats that live on a trolley are sailed from the shore. */
export const ON_HER_TROLLEY: Doing = { ...SAILING, place: 'ashore' };
export const LAID_UP_ASHORE: Doing = { ...SAILING, place: 'ashore', use: 'laid_up' };
export const LAID_UP_AFLOAT: Doing = { ...SAILING, use: 'laid_up' };
export const MAST_DOWN: Doing = { ...LAID_UP_ASHORE, dismantled: true };
export const IN_THE_SHED: Doing = { ...LAID_UP_ASHORE, underRepair: true };
export const OUT_OF_SERVICE: Doing = { ...LAID_UP_ASHORE, use: 'out_of_service' };

/** From so many days ago. Told to the office the day after, or when she was entered. */
export function since(log: Logbook, daysAgo: number, doing: Doing): SituationPlan {
  const from = addDays(log.today, -daysAgo);
  return { ...doing, from: formatDay(from), learnedOn: learnedFrom(log, addDays(from, 1)) };
}

/** Last year's round: in the water when she was entered, laid up, launched again. */
export function lastYear(log: Logbook, usual: Doing, laidUp: Doing): SituationPlan[] {
  const entered = log.today - log.enteredOn;
  const rounds = [since(log, entered, usual), since(log, 390, laidUp), since(log, log.today - log.careOn, usual)];
  return entered > 400 ? rounds : rounds.slice(0, 1);
}

export function happened(log: Logbook, event: VesselEventKind, daysAgo: number, note: string | null = null): EventPlan {
  const on = addDays(log.today, -daysAgo);
  return { event, on: formatDay(on), planned: false, note, learnedOn: learnedFrom(log, addDays(on, 2)) };
}

export function planned(log: Logbook, event: VesselEventKind, inDays: number, note: string | null = null): EventPlan {
  return { event, on: formatDay(addDays(log.today, inDays)), planned: true, note, learnedOn: addDays(log.today, -10) };
}
