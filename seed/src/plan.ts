/** A fleet as it will be laid out: plain data in which every day is fixed already. Nothing is written yet. */
import type { FactInput } from '@garboard/actions/item/record-fact.ts';
import type { NewOwnRule } from '@garboard/actions/rule/lay-down-rule.ts';
import type { AnswerInput } from '@garboard/actions/safety-notice/answered-item.ts';
import type { NoticeInput } from '@garboard/actions/safety-notice/notice-input.ts';
import type { NewEvent } from '@garboard/actions/vessel/record-event.ts';
import type { NewSituation } from '@garboard/actions/vessel/record-situation.ts';
import type { ItemParticulars } from '@garboard/db/item/item-record.ts';
import type { Particulars } from '@garboard/db/vessel/vessel-record.ts';
import type { Day } from '@garboard/domain/calendar/day.ts';
import type { ItemKindId } from '@garboard/domain/item/item-kind.ts';
import type { SurveyPlan } from './visits/survey-plan.ts';

export type FleetPlan = {
  readonly name: string;
  readonly timeZone: string;
  readonly season: { readonly from: string; readonly to: string };
  readonly vessels: readonly VesselPlan[];
  readonly notices: readonly NoticePlan[];
  readonly ownRules: readonly OwnRulePlan[];
};

export type VesselPlan = {
  readonly particulars: Particulars;
  /** The day on which she and all that was known of her were put on the register. */
  readonly enteredOn: Day;
  readonly situations: readonly SituationPlan[];
  readonly events: readonly EventPlan[];
  readonly items: readonly ItemPlan[];
  /** `null`: nobody surveys her. */
  readonly survey: SurveyPlan | null;
};

export type SituationPlan = Omit<NewSituation, 'vesselId'> & { readonly learnedOn: Day };
export type EventPlan = Omit<NewEvent, 'vesselId'> & { readonly learnedOn: Day };

export type ItemPlan = ItemParticulars & {
  readonly kind: ItemKindId;
  /** In the order in which they were learned. */
  readonly facts: readonly FactPlan[];
};

export type FactPlan = Omit<FactInput, 'corrects'> & {
  readonly learnedOn: Day;
  /** The earlier fact of the same item that this one strikes out. */
  readonly strikesOut?: FactPlan;
};

/** A maker's notice, entered with its answers on the days on which they came. */
export type NoticePlan = {
  readonly notice: NoticeInput;
  readonly enteredOn: Day;
  /** For the things it covers or may cover, in the order of the list, again from the first; `null`: nobody has answered. */
  readonly answers: readonly (AnswerInput | null)[];
  readonly withdrawn?: { readonly on: Day; readonly reason: string };
};

/** An own rule's versions in the order in which they were laid down, each with the day on which it was. */
export type OwnRulePlan = readonly { readonly laidDownOn: Day; readonly version: NewOwnRule }[];
