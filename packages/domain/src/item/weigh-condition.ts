/** Whether a rule's condition holds for an item. What is not recorded is an answer of its own. */

import type { Day } from '../calendar/day.ts';
import { addPeriod } from '../calendar/period.ts';
import type { RecordedDate } from '../calendar/recorded-date.ts';
import { dayInWords, periodInWords, periodOf } from '../calendar/words.ts';
import type { Condition } from '../rule/rule.ts';
import { ATTRIBUTES, type AttributeId, type Attributes, dateOf, wholeNumberOf } from './attribute.ts';
import type { ItemKindId } from './item-kind.ts';

/** What a condition is weighed against; `manufactured` is that of the unit aboard. */
export type Particulars = {
  readonly kind: ItemKindId;
  readonly attributes: Attributes;
  readonly manufactured: RecordedDate | null;
};

export type Weighed = 'holds' | 'fails' | 'not_recorded';

/** `next` is the day that the interval under the condition would lead to. */
export function weighCondition(condition: Condition, of: Particulars, next?: Day): Weighed {
  switch (condition.kind) {
    case 'kind_is':
      return told(condition.kinds.includes(of.kind));
    case 'attribute_is': {
      const value = of.attributes[condition.attribute];
      return value === undefined ? 'not_recorded' : told(value === condition.value);
    }
    case 'attribute_below': {
      const value = wholeNumberOf(of.attributes, condition.attribute);
      return value === null ? 'not_recorded' : told(value < condition.below);
    }
    case 'valid_through_next': {
      const date = dateOf(of.attributes, condition.attribute);
      return date === null || next === undefined ? 'not_recorded' : told(date.last >= next);
    }
    case 'younger_than': {
      if (of.manufactured === null || next === undefined) return 'not_recorded';
      return told(addPeriod(of.manufactured.first, periodOf(condition.age)) > next);
    }
  }
}

/** The condition for somebody who wants to know what would have to be so. */
export function conditionInWords(condition: Condition, next?: Day): string {
  switch (condition.kind) {
    case 'kind_is':
      return 'another kind';
    case 'attribute_is':
      return `${ATTRIBUTES[condition.attribute].words}: ${valueInWords(condition.attribute, condition.value)}`;
    case 'attribute_below':
      return `${ATTRIBUTES[condition.attribute].words}: fewer than ${condition.below}`;
    case 'valid_through_next':
      return `${ATTRIBUTES[condition.attribute].words}: not before ${next === undefined ? 'the next service' : dayInWords(next)}`;
    case 'younger_than':
      return `its age: under ${periodInWords(condition.age)}${next === undefined ? '' : ` on ${dayInWords(next)}`}`;
  }
}

function told(holds: boolean): Weighed {
  return holds ? 'holds' : 'fails';
}

function valueInWords(id: AttributeId, value: string | boolean): string {
  const type = ATTRIBUTES[id].type;
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return type.kind === 'choice' ? (type.choices.find((choice) => choice.value === value)?.words ?? value) : value;
}
