/** What the rules of several classes share: how often, from when, and the source of what has none. */
import type { AttributeId } from '../../item/attribute.ts';
import type { Duty, Interval, Limit, PeriodText, Source } from '../rule.ts';

export const NO_SOURCE: Source = { publication: null, clause: null, address: null, status: 'common_practice' };

export function every(period: PeriodText): Interval {
  return { kind: 'fixed', period };
}

/** Somebody's own figure in months; without it `otherwise`, and without that no date. */
export function ownFigure(attribute: AttributeId, otherwise?: PeriodText): Interval {
  return otherwise === undefined ? { kind: 'own_figure', attribute } : { kind: 'own_figure', attribute, otherwise };
}

export function sinceLastDone(plus: Interval): Limit {
  return { kind: 'after', from: 'last_done', plus };
}

export function sinceFitted(plus: Interval): Limit {
  return { kind: 'after', from: 'installed', plus };
}

/** From the last time; where none is on record, the first counts from fitting: our reading. */
export function sinceLastOrFitted(plus: Interval, what: string): Required<Pick<Duty, 'limits' | 'fallback'>> {
  return {
    limits: [sinceLastDone(plus)],
    fallback: [
      {
        kind: 'after',
        from: 'installed',
        plus,
        reading: `no ${what} is on record, so the first is counted from fitting`,
      },
    ],
  };
}
