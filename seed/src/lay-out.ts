/** Writes a plan the way people would have: through the actions, each on the day it was learned. */
import type { ActionContext } from '@garboard/actions/context.ts';
import { addItem } from '@garboard/actions/item/add-item.ts';
import { recordFact } from '@garboard/actions/item/record-fact.ts';
import type { Result } from '@garboard/actions/result.ts';
import { createVessel } from '@garboard/actions/vessel/create-vessel.ts';
import { recordEvent } from '@garboard/actions/vessel/record-event.ts';
import { recordSituation } from '@garboard/actions/vessel/record-situation.ts';
import type { Db } from '@garboard/db/pool.ts';
import { wholeFleet } from '@garboard/db/scope.ts';
import type { Day } from '@garboard/domain/calendar/day.ts';
import type { FactPlan, ItemPlan, VesselPlan } from './plan.ts';
import { layOutSurvey } from './visits/lay-out-survey.ts';

export async function layOutVessel(db: Db, organisationId: string, plan: VesselPlan): Promise<void> {
  const at = officeHours(db, organisationId);
  const vessel = wanted(await createVessel(at(plan.enteredOn), plan.particulars));
  for (const { learnedOn, ...situation } of plan.situations) {
    wanted(await recordSituation(at(learnedOn), { ...situation, vesselId: vessel.id }));
  }
  for (const { learnedOn, ...event } of plan.events) {
    wanted(await recordEvent(at(learnedOn), { ...event, vesselId: vessel.id }));
  }
  for (const item of plan.items) await layOutItem(at, plan.enteredOn, vessel.id, item);
  if (plan.survey) await layOutSurvey(officeHours(db, organisationId), vessel.id, plan.survey);
}

type At = (day: Day) => ActionContext;

async function layOutItem(at: At, enteredOn: Day, vesselId: string, { facts, ...item }: ItemPlan): Promise<void> {
  const added = wanted(await addItem(at(enteredOn), { ...item, vesselId }));
  const ids = new Map<FactPlan, string>();
  for (const plan of facts) {
    const { learnedOn, strikesOut, ...fact } = plan;
    const corrects = strikesOut ? (ids.get(strikesOut) ?? null) : null;
    const recorded = wanted(await recordFact(at(learnedOn), { itemId: added.item.id, fact: { ...fact, corrects } }));
    ids.set(plan, recorded.fact.id);
  }
}

const DAY_MS = 86_400_000;
const MORNING_MS = 8 * 3_600_000;
/** One entry after the other: what is written later is later, and no two things happen at one instant. */
const ENTRY_MS = 41_000;

/** Before the first entry of the day. */
export function morningOf(day: Day): Date {
  return new Date(day * DAY_MS + MORNING_MS);
}

export function officeHours(db: Db, organisationId: string): At {
  let entries = 0;
  return (day) => {
    entries += 1;
    const now = new Date(morningOf(day).getTime() + entries * ENTRY_MS);
    return { ...wholeFleet(organisationId), db, actor: OFFICE, requestId: 'demo-fleets', now };
  };
}

/** Nobody signed in for this. */
const OFFICE = { kind: 'upkeep', id: '00000000-0000-7000-8000-000000000000', role: 'manager' } as const;

/** The plan is ours: an action that refuses it is a fault. */
export function wanted<T>(result: Result<T>): T {
  if (result.ok) return result.value;
  throw new Error(`demo fleets: ${JSON.stringify(result.failure)}`);
}
