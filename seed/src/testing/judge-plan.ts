/** For tests: what the rules make of a plan, without a database. */
import { toFact } from '@garboard/db/item/fact-record.ts';
import { type Day, formatDay, parseDay } from '@garboard/domain/calendar/day.ts';
import { type Standing, standingOn } from '@garboard/domain/due-list/standing.ts';
import type { Fact } from '@garboard/domain/item/fact.ts';
import { factProblems } from '@garboard/domain/item/fact-problems.ts';
import type { Obligation } from '@garboard/domain/item/obligation.ts';
import { workOutObligations } from '@garboard/domain/item/work-out-obligations.ts';
import { morningOf } from '../office.ts';
import type { FactPlan, FleetPlan, ItemPlan, VesselPlan } from '../plan.ts';

export type Judged = {
  readonly vessel: VesselPlan;
  readonly item: ItemPlan;
  readonly facts: readonly Fact[];
  readonly obligations: readonly Obligation[];
  /** What `recordFact` would refuse. */
  readonly problems: readonly string[];
  readonly doubts: readonly string[];
};

export function judgeFleet(fleet: FleetPlan): Judged[] {
  return fleet.vessels.flatMap((vessel) => vessel.items.map((item) => judge(vessel, item)));
}

export function standings({ obligations }: Pick<Judged, 'obligations'>, today: Day): Standing[] {
  return obligations.map(({ outcome }) => standingOn(outcome, today));
}

function judge(vessel: VesselPlan, item: ItemPlan): Judged {
  const { kind, attributes } = item;
  const facts: Fact[] = [];
  const problems: string[] = [];
  const doubts: string[] = [];
  for (const plan of item.facts) {
    const fact = asFact(plan, item.facts);
    const judgement = factProblems(fact, { kind, attributes, facts }, plan.learnedOn);
    problems.push(...judgement.problems.map(({ detail }) => `${vessel.particulars.name}, ${item.label}: ${detail}`));
    doubts.push(...judgement.doubts);
    facts.push(fact);
  }
  const { schemes } = vessel.particulars;
  const obligations = workOutObligations(
    { kind, attributes, facts },
    { schemes, situations: [], events: eventsOf(vessel) },
  );
  return { vessel, item, facts, obligations, problems, doubts };
}

function asFact(plan: FactPlan, all: readonly FactPlan[]): Fact {
  const { learnedOn, strikesOut, ...fact } = plan;
  const place = all.indexOf(plan);
  const recordedAt = new Date(morningOf(learnedOn).getTime() + place * 1000).toISOString();
  const corrects = strikesOut ? idOf(all.indexOf(strikesOut)) : null;
  return toFact({ ...fact, id: idOf(place), itemId: 'item', recordedAt, recordedBy: 'office', corrects });
}

/** Sorts as the facts were entered. */
const idOf = (place: number) => `fact ${String(place).padStart(3, '0')}`;

function eventsOf({ events }: VesselPlan) {
  return events.map(({ event, on, planned, learnedOn }, place) => ({
    id: idOf(place),
    event,
    on: parseDay(on) ?? learnedOn,
    planned,
    recordedAt: formatDay(learnedOn),
  }));
}
