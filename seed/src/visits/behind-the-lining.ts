/** What no visit could see until one has, and the specialist whom the last one asks for. */
import type { ActionContext } from '@garboard/actions/context.ts';
import { answerLimitation, imposeLimitation } from '@garboard/actions/survey-visit/limitation.ts';
import { refer } from '@garboard/actions/survey-visit/referral.ts';
import type { LimitationRecord, VisitRecord } from '@garboard/db/survey-visit/visit-record.ts';
import { addDays, type Day, formatDay } from '@garboard/domain/calendar/day.ts';
import { type At, wanted } from '../office.ts';
import type { SurveyPlan } from './survey-plan.ts';

export type Unseen = { limitation: LimitationRecord | null };

const CHAINPLATES = {
  zone: 'structure_inside',
  itemId: null,
  what: 'Chainplates behind the lining',
  words: null,
  trade: null,
} as const;
const ALOFT = {
  zone: 'mast_and_rigging',
  itemId: null,
  findingId: null,
  what: 'Mast aloft and all terminals',
  responsible: null,
} as const;

export async function lookBehind(
  ctx: ActionContext,
  { id: visitId }: VisitRecord,
  { lining }: SurveyPlan,
  unseen: Unseen,
  index: number,
): Promise<void> {
  if (lining?.from === index)
    unseen.limitation = wanted(
      await imposeLimitation(ctx, { visitId, said: { ...CHAINPLATES, reason: 'no_access_lining' } }),
    );
  else if (unseen.limitation && !unseen.limitation.liftedOn) {
    const { id: limitationId, version: expectedVersion } = unseen.limitation;
    const answer =
      lining?.until === index
        ? ({ answer: 'lifted', reason: null, words: 'Lining taken down: dry, no rust.' } as const)
        : ({ answer: 'still', reason: 'no_access_lining', words: null } as const);
    unseen.limitation = wanted(await answerLimitation(ctx, { limitationId, visitId, expectedVersion, ...answer }));
  }
}

/** Due before today too: too often nobody comes. */
export async function askRigger(
  at: At,
  day: Day,
  { id: visitId }: VisitRecord,
  { riggerInDays }: SurveyPlan,
): Promise<void> {
  if (riggerInDays === null) return;
  const said = { ...ALOFT, trade: 'rigger', dueOn: formatDay(addDays(day, riggerInDays)) };
  wanted(await refer(at(day), { visitId, said }));
}
