/** What is known of an item beside its facts, in columns: its attributes, and the organisation's own figures. */
import { parsePeriod } from '../../calendar/period.ts';
import { firstDayOf, lastDayFrom } from '../../calendar/recorded-date.ts';
import { ATTRIBUTE_IDS, type AttributeId, type Attributes, wholeNumberOf } from '../../item/attribute.ts';
import { inOrderOfPrecedence, type Override } from '../override.ts';
import { attributeCode, NO_DAY, weightCode } from './codes.ts';
import { withRoom } from './grow.ts';
import type { ItemColumns } from './item-columns.ts';
import type { Plan } from './plan.ts';

const KNOWN: ReadonlySet<string> = new Set(ATTRIBUTE_IDS);

/** Answers with the row after the last. An attribute that no rule knows is passed over. */
export function fillAttributes(said: Attributes, from: number, plan: Plan, columns: ItemColumns): number {
  let row = from;
  for (const id in said) {
    if (!KNOWN.has(id)) continue;
    columns.attributes = withRoom(columns.attributes, columns.attributes.attribute, row + 1);
    const { attribute, value, whole, first, last } = columns.attributes;
    const is = said[id] as string | number | boolean;
    const day = typeof is === 'string' ? firstDayOf(is) : null;
    attribute[row] = attributeCode(id as AttributeId);
    value[row] = plan.valueCode(is);
    whole[row] = wholeNumberOf(said, id as AttributeId) ?? 0;
    first[row] = day ?? NO_DAY;
    last[row++] = day === null ? NO_DAY : lastDayFrom(day, is as string);
  }
  return row;
}

/** Answers with the row after the last, the one that goes first first. One for a duty that is no more is passed over. */
export function fillOverrides(all: readonly Override[], from: number, plan: Plan, columns: ItemColumns): number {
  let row = from;
  for (const each of all.length > 1 ? inOrderOfPrecedence(all) : all) {
    const duty = plan.numberOf(each.ruleId, each.duty);
    if (duty === undefined) continue;
    columns.overrides = withRoom(columns.overrides, columns.overrides.duty, row + 1);
    fillOverride(each, duty, row++, columns);
  }
  return row;
}

function fillOverride(override: Override, number: number, row: number, { overrides }: ItemColumns): void {
  const { duty, months, days, weight, from, recordedAt, endedOn, endedAt } = overrides;
  const period = parsePeriod(override.period);
  if (!period) throw new Error(`override ${override.id}: no period ${override.period}`);
  duty[row] = number;
  months[row] = period.months;
  days[row] = period.days;
  weight[row] = weightCode(override.weight);
  from[row] = override.from;
  recordedAt[row] = Date.parse(override.recordedAt);
  endedOn[row] = override.ended?.on ?? NO_DAY;
  endedAt[row] = override.ended ? Date.parse(override.ended.recordedAt) : Number.POSITIVE_INFINITY;
}
