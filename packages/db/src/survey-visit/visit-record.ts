/** A visit as stored, and what belongs to it. */
import type { Purpose, Water } from '@garboard/domain/survey-visit/codes.ts';
import type { Instrument } from '@garboard/domain/survey-visit/instrument.ts';
import type { Craft } from '@garboard/domain/survey-visit/zones.ts';

export type VisitPerson = { readonly name: string; readonly capacity: string; readonly qualification: string | null };
export type RouteZone = { readonly zone: string; readonly name: string };

export type VisitDetail = {
  readonly client: string | null;
  readonly instructions: string | null;
  readonly persons: readonly VisitPerson[];
  readonly place: string | null;
  readonly water: Water;
  readonly ashoreSince: string | null;
  readonly weather: string | null;
  readonly hoursAboard: number | null;
  readonly ownerAttended: boolean;
  readonly instruments: readonly Instrument[];
};

/** `completed`: since then nothing of it changes. */
export type VisitRecord = {
  readonly id: string;
  readonly vesselId: string;
  readonly vesselName: string;
  readonly timeZone: string;
  readonly craft: Craft;
  readonly purpose: Purpose;
  readonly startedOn: string;
  readonly detail: VisitDetail;
  readonly route: readonly RouteZone[];
  readonly createdBy: string;
  readonly completed: { readonly on: string; readonly at: string; readonly by: string; readonly hash: string } | null;
  readonly version: number;
};

export type AnswerRecord = {
  readonly id: string;
  readonly zone: string;
  readonly answer: string;
  readonly reason: string | null;
  readonly words: string | null;
  readonly recordedBy: string;
  readonly recordedAt: string;
};

export type ReadingRecord = {
  readonly id: string;
  readonly zone: string;
  readonly point: string;
  readonly measure: string;
  readonly value: number | null;
  readonly unit: string;
  readonly instrument: string | null;
  readonly words: string | null;
  readonly takenOn: string;
};

export type LimitationRecord = {
  readonly id: string;
  readonly visitId: string;
  readonly vesselId: string;
  readonly vesselName: string;
  readonly zone: string;
  readonly itemId: string | null;
  readonly what: string;
  readonly reason: string;
  readonly words: string | null;
  readonly trade: string | null;
  readonly imposedOn: string;
  readonly liftedOn: string | null;
  readonly version: number;
};

export type LimitationAnswer = {
  readonly id: string;
  readonly limitationId: string;
  readonly answer: 'lifted' | 'still';
  readonly reason: string | null;
  readonly words: string | null;
  readonly on: string;
};

export type ReferralResult = {
  readonly on: string;
  readonly by: string;
  readonly qualification: string | null;
  readonly words: string;
  readonly recordedAt: string;
};

export type ReferralRecord = {
  readonly id: string;
  readonly visitId: string | null;
  readonly vesselId: string;
  readonly vesselName: string;
  readonly zone: string;
  readonly itemId: string | null;
  readonly findingId: string | null;
  readonly trade: string;
  readonly what: string;
  readonly dueOn: string;
  readonly responsible: string | null;
  readonly askedOn: string;
  readonly result: ReferralResult | null;
  readonly version: number;
};

export type AddendumRecord = {
  readonly id: string;
  readonly name: string;
  readonly words: string;
  readonly reason: string;
  readonly recordedBy: string;
  readonly recordedAt: string;
};
