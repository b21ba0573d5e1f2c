/** What a limitation and a referral want of whom, and by when: their lines of the due list. */
import type { MatterSaid } from '../finding/matter.ts';

export type Limitation = {
  readonly zone: string;
  readonly what: string;
  readonly trade: string | null;
  readonly imposedOn: string;
  readonly liftedOn: string | null;
};

/** `nextVisit`: the next planned visit, where one is planned. Lifting it needs somebody who looks. */
export function matterOfLimitation(limitation: Limitation, nextVisit: string | null): MatterSaid | null {
  if (limitation.liftedOn !== null) return null;
  return {
    source: 'limitation',
    zone: limitation.zone,
    label: limitation.what,
    action: 'Examine what could not be examined',
    sentence:
      nextVisit === null
        ? `Not examined on ${limitation.imposedOn}. It comes back at the next visit; none is planned.`
        : `Not examined on ${limitation.imposedOn}. The next planned visit.`,
    urgency: null,
    trade: limitation.trade,
    responsible: null,
    on: nextVisit,
  };
}

export type Referral = {
  readonly zone: string;
  readonly what: string;
  readonly trade: string;
  readonly dueOn: string;
  readonly responsible: string | null;
  readonly isAnswered: boolean;
};

export function matterOfReferral(referral: Referral): MatterSaid | null {
  if (referral.isAnswered) return null;
  return {
    source: 'referral',
    zone: referral.zone,
    label: referral.what,
    action: 'Have a specialist look closer',
    sentence: 'The day by which the specialist was to look.',
    urgency: null,
    trade: referral.trade,
    responsible: referral.responsible,
    on: referral.dueOn,
  };
}
