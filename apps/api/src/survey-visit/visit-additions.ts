/** POST /v1/visits/{visitId}/zones, …/readings, …/limitations, …/referrals and …/addenda. */
import { addAddendum } from '@garboard/actions/survey-visit/add-addendum.ts';
import { answerZone } from '@garboard/actions/survey-visit/answer-zone.ts';
import { imposeLimitation } from '@garboard/actions/survey-visit/limitation.ts';
import { refer } from '@garboard/actions/survey-visit/referral.ts';
import { takeReading } from '@garboard/actions/survey-visit/take-reading.ts';
import { Addendum, NewAddendum } from '@garboard/contract/survey-visit/visit.ts';
import {
  Limitation,
  NewLimitation,
  NewReading,
  NewReferral,
  NewZoneAnswer,
  Reading,
  Referral,
  ZoneAnswer,
} from '@garboard/contract/survey-visit/walk.ts';
import { given } from '../request/given.ts';
import { presentAddendum, presentAnswer, presentLimitation, presentReading, presentReferral } from './present-visit.ts';
import { visitAddition } from './visit-addition.ts';

export const answerZoneRoute = visitAddition(
  {
    path: '/v1/visits/{visitId}/zones',
    operationId: 'answerZone',
    summary: 'Answer a place of the route',
    description: 'For `owner`, `manager` and `surveyor`. Answered again, the last counts and the earlier stays.',
    body: NewZoneAnswer,
    answer: ZoneAnswer,
  },
  (ctx, visitId, said) => answerZone(ctx, { visitId, said: { reason: null, words: null, ...given(said) } }),
  presentAnswer,
);

export const takeReadingRoute = visitAddition(
  {
    path: '/v1/visits/{visitId}/readings',
    operationId: 'takeReading',
    summary: 'Write down a reading at a survey point',
    description:
      'For `owner`, `manager` and `surveyor`. A moisture meter compares; it does not measure water content. What was not measured is a gap, never nought.',
    body: NewReading,
    answer: Reading,
  },
  (ctx, visitId, said) =>
    takeReading(ctx, { visitId, said: { value: null, instrument: null, words: null, ...given(said) } }),
  ({ reading, visit }) => presentReading(reading, visit),
);

export const imposeLimitationRoute = visitAddition(
  {
    path: '/v1/visits/{visitId}/limitations',
    operationId: 'imposeLimitation',
    summary: 'Say what could not be examined, and why',
    description:
      'For `owner`, `manager` and `surveyor`. It is not assessed, never good, and stands on the route of the next visits until one has looked.',
    body: NewLimitation,
    answer: Limitation,
  },
  (ctx, visitId, said) =>
    imposeLimitation(ctx, { visitId, said: { itemId: null, words: null, trade: null, ...given(said) } }),
  presentLimitation,
);

export const referRoute = visitAddition(
  {
    path: '/v1/visits/{visitId}/referrals',
    operationId: 'askSpecialist',
    summary: 'Ask for a specialist to look closer',
    description:
      'For `owner`, `manager` and `surveyor`. It has a day and a place on the due list until its result is reported.',
    body: NewReferral,
    answer: Referral,
  },
  (ctx, visitId, said) =>
    refer(ctx, { visitId, said: { itemId: null, findingId: null, responsible: null, ...given(said) } }),
  presentReferral,
);

export const addAddendumRoute = visitAddition(
  {
    path: '/v1/visits/{visitId}/addenda',
    operationId: 'addAddendum',
    summary: 'Correct a sealed visit by an addendum',
    description: 'For `owner`, `manager` and `surveyor`, once the visit is completed. The sealed text stays as it is.',
    body: NewAddendum,
    answer: Addendum,
  },
  (ctx, visitId, said) => addAddendum(ctx, { visitId, said }),
  presentAddendum,
);
