/** A condition made ready: the same as `weighCondition`. */
import { addMonths, type Day } from '../../calendar/day.ts';
import { periodOf } from '../../calendar/words.ts';
import type { Applies, Condition } from '../rule.ts';
import type { Aboard } from './aboard.ts';
import { attributeCode, kindCode, NO_DAY, NONE } from './codes.ts';
import { madeRow } from './dates-aboard.ts';

const FAILS = 0;
export const HOLDS = 1;
const NOT_RECORDED = 2;

/** `next`: the day that the interval under the condition would lead to; `NO_DAY` outside an interval. */
export type ConditionPlan = (aboard: Aboard, next: number) => number;
export type NumberValue = (value: string | boolean) => number;

const told = (holds: boolean): number => (holds ? HOLDS : FAILS);

export function compileCondition(condition: Condition, number: NumberValue): ConditionPlan {
  switch (condition.kind) {
    case 'kind_is': {
      const kinds = new Set(condition.kinds.map(kindCode));
      return ({ kind }) => told(kinds.has(kind));
    }
    case 'attribute_is': {
      const at = attributeCode(condition.attribute);
      const asked = number(condition.value);
      return ({ value }) => (value[at] === NONE ? NOT_RECORDED : told(value[at] === asked));
    }
    case 'attribute_below': {
      const at = attributeCode(condition.attribute);
      const { below } = condition;
      return ({ whole }) => (whole[at] === 0 ? NOT_RECORDED : told((whole[at] as number) < below));
    }
    case 'valid_through_next': {
      const at = attributeCode(condition.attribute);
      return ({ dateLast }, next) =>
        dateLast[at] === NO_DAY || next === NO_DAY ? NOT_RECORDED : told((dateLast[at] as number) >= next);
    }
    case 'younger_than':
      return youngerThan(condition.age);
  }
}

function youngerThan(age: string): ConditionPlan {
  const { months, days } = periodOf(age);
  return (aboard, next) => {
    const made = madeRow(aboard);
    if (made === NONE || next === NO_DAY) return NOT_RECORDED;
    return told(addMonths(aboard.columns.facts.first[made] as Day, months) + days > next);
  };
}

/** Whether all of them hold, or are taken to. */
export function compileApplies(conditions: readonly Applies[] = [], number: NumberValue): (aboard: Aboard) => boolean {
  const all = conditions.map(({ condition, ifNotRecorded }) => ({
    weigh: compileCondition(condition, number),
    otherwise: ifNotRecorded === 'applies',
  }));
  return (aboard) => {
    for (const { weigh, otherwise } of all) {
      const weighed = weigh(aboard, NO_DAY);
      if (weighed === FAILS || (weighed === NOT_RECORDED && !otherwise)) return false;
    }
    return true;
  };
}
