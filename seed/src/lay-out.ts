/** Writes a plan the way people would have: through the actions, each on the day it was learned. */
import { addItem } from '@garboard/actions/item/add-item.ts';
import { recordFact } from '@garboard/actions/item/record-fact.ts';
import { createVessel } from '@garboard/actions/vessel/create-vessel.ts';
import { recordEvent } from '@garboard/actions/vessel/record-event.ts';
import { recordSituation } from '@garboard/actions/vessel/record-situation.ts';
import type { Files } from '@garboard/blobs/files.ts';
import type { Db } from '@garboard/db/pool.ts';
import type { Day } from '@garboard/domain/calendar/day.ts';
import { type At, officeHours, wanted } from './office.ts';
import type { FactPlan, ItemPlan, VesselPlan } from './plan.ts';
import { layOutSurvey } from './visits/lay-out-survey.ts';

type Where = { readonly db: Db; readonly files: Files; readonly organisationId: string };

export async function layOutVessel({ db, files, organisationId }: Where, plan: VesselPlan): Promise<void> {
  const at = officeHours(db, organisationId);
  const vessel = wanted(await createVessel(at(plan.enteredOn), plan.particulars));
  for (const { learnedOn, ...situation } of plan.situations) {
    wanted(await recordSituation(at(learnedOn), { ...situation, vesselId: vessel.id }));
  }
  for (const { learnedOn, ...event } of plan.events) {
    wanted(await recordEvent(at(learnedOn), { ...event, vesselId: vessel.id }));
  }
  for (const item of plan.items) await layOutItem(at, plan.enteredOn, vessel.id, item);
  if (plan.survey) await layOutSurvey(officeHours(db, organisationId), { files, vesselId: vessel.id }, plan.survey);
}

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
