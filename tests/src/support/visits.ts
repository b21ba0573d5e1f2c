/** Short ways to survey visits, through the actions and nothing else. */
import type { ActionContext } from '@garboard/actions/context.ts';
import { answerZone } from '@garboard/actions/survey-visit/answer-zone.ts';
import { completeVisit } from '@garboard/actions/survey-visit/complete-visit.ts';
import { imposeLimitation } from '@garboard/actions/survey-visit/limitation.ts';
import { refer } from '@garboard/actions/survey-visit/referral.ts';
import { setRoute } from '@garboard/actions/survey-visit/set-route.ts';
import { type NewVisit, startVisit } from '@garboard/actions/survey-visit/start-visit.ts';
import type { VisitDetail, VisitRecord } from '@garboard/db/survey-visit/visit-record.ts';
import { accepted, TODAY } from './organisation.ts';

const NOTHING_SAID: VisitDetail = {
  ...{ client: null, instructions: null, persons: [], place: null, water: 'ashore', ashoreSince: null },
  ...{ weather: null, hoursAboard: null, ownerAttended: false, instruments: [] },
};

export async function aVisit(
  ctx: ActionContext,
  vesselId: string,
  { detail, ...more }: Partial<Omit<NewVisit, 'detail'>> & { detail?: Partial<VisitDetail> } = {},
): Promise<VisitRecord> {
  const visit = { craft: 'sailing_yacht', purpose: 'condition', startedOn: '2026-11-20', ...more } as const;
  return accepted(await startVisit(ctx, { ...visit, vesselId, detail: { ...NOTHING_SAID, ...detail } }));
}

/** Open boats are walked in one place, so that a visit is soon complete. */
export async function aShortRoute(ctx: ActionContext): Promise<void> {
  const zones = [{ zone: 'papers', name: 'Papers and identity' }];
  accepted(await setRoute(ctx, { craft: 'open_boat', zones, expectedVersion: 1 }));
}

/** On the short route, with everything answered: it can be completed. */
export async function aReadyVisit(ctx: ActionContext, vesselId: string): Promise<VisitRecord> {
  const visit = await aVisit(ctx, vesselId, { craft: 'open_boat' });
  const said = { zone: 'papers', answer: 'sound', reason: null, words: null } as const;
  accepted(await answerZone(ctx, { visitId: visit.id, said }));
  return visit;
}

export async function aSealedVisit(ctx: ActionContext, vesselId: string): Promise<VisitRecord> {
  const { id, version } = await aReadyVisit(ctx, vesselId);
  return accepted(await completeVisit(ctx, { visitId: id, expectedVersion: version, completedOn: TODAY }));
}

export async function aLimitation(ctx: ActionContext, visitId: string) {
  const said = {
    itemId: null,
    words: null,
    trade: null,
    zone: 'structure_inside',
    what: 'Chainplates behind the lining',
  };
  return accepted(await imposeLimitation(ctx, { visitId, said: { ...said, reason: 'no_access_lining' } }));
}

export async function aReferral(ctx: ActionContext, visitId: string, dueOn = '2027-02-27') {
  const said = { itemId: null, findingId: null, responsible: null, zone: 'mast_and_rigging', trade: 'rigger' };
  return accepted(await refer(ctx, { visitId, said: { ...said, what: 'Mast aloft and all terminals', dueOn } }));
}
