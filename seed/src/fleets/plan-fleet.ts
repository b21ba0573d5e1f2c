/** A fleet's list, its habits and the stories of single boats, made into one plan. */
import type { Day } from '@garboard/domain/calendar/day.ts';
import { INVENTORIES } from '../equipment/inventories.ts';
import { withPlate } from '../equipment/plates.ts';
import type { Logbook, People } from '../logbook.ts';
import type { EventPlan, FleetPlan, ItemPlan, NoticePlan, OwnRulePlan, SituationPlan, VesselPlan } from '../plan.ts';
import { planSurvey } from '../visits/survey-plan.ts';
import { type Boat, logbookOf, particularsOf, type Setting } from './boat.ts';

export type FleetBook = {
  readonly setting: Omit<Setting, 'today'>;
  readonly boats: readonly Boat[];
  doing(boat: Boat, log: Logbook, index: number): readonly SituationPlan[];
  diary(boat: Boat, log: Logbook, index: number): readonly EventPlan[];
  /** By the boat's name. A story stands in for the usual thing of the same label, or comes besides. */
  readonly stories: Readonly<Record<string, (log: Logbook) => readonly ItemPlan[]>>;
  notices(today: Day, people: People): readonly NoticePlan[];
  ownRules(today: Day): readonly OwnRulePlan[];
};

export function planFleet(book: FleetBook, today: Day): FleetPlan {
  const setting = { ...book.setting, today };
  const vessels = book.boats.map((boat, index) => planVessel(book, boat, setting, index));
  const notices = book.notices(today, setting.people);
  const { fleet: name, timeZone, season } = setting;
  return { name, timeZone, season, vessels, notices, ownRules: book.ownRules(today) };
}

function planVessel(book: FleetBook, boat: Boat, setting: Setting, index: number): VesselPlan {
  const log = logbookOf(boat, setting);
  return {
    particulars: particularsOf(boat, setting),
    enteredOn: log.enteredOn,
    situations: book.doing(boat, log, index),
    events: book.diary(boat, log, index),
    items: withStories(INVENTORIES[boat.carries](log), book.stories[boat.name]?.(log) ?? []).map((item) =>
      withPlate(log, item),
    ),
    survey: planSurvey(boat, log, setting.currency),
  };
}

function withStories(usual: readonly ItemPlan[], stories: readonly ItemPlan[]): ItemPlan[] {
  const told = new Map(stories.map((item) => [item.label, item]));
  const isUsual = (label: string) => usual.some((item) => item.label === label);
  return [...usual.map((item) => told.get(item.label) ?? item), ...stories.filter(({ label }) => !isUsual(label))];
}
