/** Histories that bear on a certain duty, in words and as they are stored; and both engines' answers in one form. */

import { addDays, type Day, formatDay } from '@garboard/domain/calendar/day.ts';
import { parseRecordedDate, type RecordedDate } from '@garboard/domain/calendar/recorded-date.ts';
import { ATTRIBUTES, type AttributeId, type Attributes } from '@garboard/domain/item/attribute.ts';
import { CAPACITIES, type Fact } from '@garboard/domain/item/fact.ts';
import type { ItemHistory, VesselHistory } from '@garboard/domain/item/work-out-obligations.ts';
import { OVERRIDE_WEIGHTS, type Override } from '@garboard/domain/rule/override.ts';
import type { Condition, Duty, PeriodText, Reset, Rule } from '@garboard/domain/rule/rule.ts';
import { dutyReads, ruleReads } from '@garboard/domain/rule/rule-reads.ts';
import { SCHEME_IDS } from '@garboard/domain/rule/scheme.ts';
import fc from 'fast-check';
import { anyDay, anyFact, anyInstant, anyItem, anyVessel } from './any-history.ts';

export type RuleAndDuty = { readonly rule: Rule; readonly duty: Duty };
export type AnyCase = { readonly item: ItemHistory; readonly vessel: VesselHistory };

/**
 * An item of a kind that the duty is for, with acts, plates, attributes, events and figures that it reads, and others.
 * Half of the facts lie on or close to a few days, so that they meet.
 */
export function caseFor({ rule, duty }: RuleAndDuty): fc.Arbitrary<AnyCase> {
  const kinds = duty.onlyFor ?? rule.kinds;
  const bearing = { weight: 4, arbitrary: factFor(duty) };
  return fc
    .record({
      kind: fc.constantFrom(...(kinds as [ItemHistory['kind'], ...ItemHistory['kind'][]])),
      facts: fc.array(fc.tuple(fc.oneof(bearing, { weight: 1, arbitrary: anyFact }), anyTwist), { maxLength: 9 }),
      meeting: fc.tuple(anyDay, anyDay),
      attributes: attributesFor(rule),
      overrides: fc.array(overrideFor(rule, duty), { maxLength: 3 }),
      vessel: vesselFor(duty),
    })
    .map(({ kind, facts, meeting, attributes, overrides, vessel }) => ({
      item: {
        ...{ kind, attributes, overrides: overrides.map(named) },
        facts: facts.map(([fact, twist], at) => twisted(fact, at, twist, meeting)),
      },
      vessel,
    }));
}

/** `strikes`: one in six strikes out another one, now and then itself or one that is not there. */
const anyTwist = fc.record({
  strikes: fc.nat({ max: 60 }),
  meets: fc.constantFrom(null, null, 0, 1),
  after: fc.constantFrom(0, 0, 0, 1, 170, 183, 184),
});
type Twist = { readonly strikes: number; readonly meets: number | null; readonly after: number };

function twisted(fact: Omit<Fact, 'id'>, at: number, { strikes, meets, after }: Twist, meeting: readonly Day[]): Fact {
  const day = meets === null ? undefined : meeting[meets];
  const on = day === undefined ? fact.on : recordedOn(formatDay(addDays(day, after)).slice(0, fact.on.text.length));
  return {
    ...fact,
    id: `f${at}`,
    on,
    ...(strikes < 10 && { corrects: `f${strikes}` }),
    ...(strikes < 3 && { retracts: true as const }),
  };
}

const named = (override: Omit<Override, 'id'>, at: number): Override => ({ ...override, id: `o${at}` });

function factFor(duty: Duty): fc.Arbitrary<Omit<Fact, 'id'>> {
  const { facts } = dutyReads(duty);
  const resets = [...duty.resets, ...termsOf(duty)];
  const kinds = facts.length > 0 ? facts : (['installed'] as const);
  const plain = fc
    .tuple(anyFact, fc.constantFrom(...kinds))
    .map(([{ test: _, ...fact }, kind]) => ({ ...fact, fact: kind }));
  if (resets.length === 0) return plain.map(withReading);
  return fc
    .oneof(plain, fc.tuple(anyFact, fc.constantFrom(...resets), fc.nat(), fc.integer({ min: 0, max: 5 })).map(asActOf))
    .map(withReading);
}

function asActOf([{ test: _, doneBy: __, ...fact }, { act, tests, by }, pick, who]: [
  Omit<Fact, 'id'>,
  Reset,
  number,
  number,
]) {
  const capacity = who === 0 ? CAPACITIES[pick % CAPACITIES.length] : by[pick % by.length];
  const test = tests?.[pick % tests.length];
  return { ...fact, fact: act, ...(test && { test }), ...(capacity && who !== 1 && { doneBy: { capacity } }) };
}

/** Hours that mostly go up with the days. */
function withReading({ reading, ...fact }: Omit<Fact, 'id'>): Omit<Fact, 'id'> {
  if (fact.fact !== 'meter') return fact;
  const value = Math.max(0, fact.on.first - 12_000) + ((reading?.value ?? 0) % 50);
  return { ...fact, reading: { value, unit: value % 17 === 0 ? 'sea_miles' : 'hours' } };
}

function termsOf(duty: Duty): readonly Reset[] {
  return duty.limits.flatMap((limit) => ('terms' in limit ? [...limit.terms.begunBy, ...limit.terms.renewedBy] : []));
}

/** Each attribute that the rule reads with a value that it asks for, with another, or not at all. */
function attributesFor(rule: Rule): fc.Arbitrary<Attributes> {
  const asked = conditionsOf(rule);
  const entries = ruleReads(rule).attributes.map((id) => [id, anyValueFor(id, asked)] as const);
  return fc.record(Object.fromEntries(entries), { requiredKeys: [] }) as fc.Arbitrary<Attributes>;
}

const anyDate = fc.tuple(anyDay, fc.constantFrom(4, 7, 10)).map(([day, length]) => formatDay(day).slice(0, length));

function anyValueFor(id: AttributeId, conditions: readonly Condition[]): fc.Arbitrary<string | number | boolean> {
  const asked = conditions.flatMap((each) =>
    each.kind === 'attribute_is' && each.attribute === id ? [each.value] : [],
  );
  const { type } = ATTRIBUTES[id];
  const odd = fc.constantFrom<(string | number | boolean)[]>('something else', 0, -3, 2.5, true, '2026-02-30');
  const sound = (): fc.Arbitrary<string | number | boolean> => {
    switch (type.kind) {
      case 'months':
        return fc.integer({ min: 1, max: 130 });
      case 'hours':
        return fc.integer({ min: 1, max: 900 });
      case 'yes_no':
        return fc.boolean();
      case 'date':
        return anyDate;
      case 'choice':
        return fc.constantFrom(...type.choices.map(({ value }) => value));
    }
  };
  return fc.oneof(
    { weight: 6, arbitrary: sound() },
    ...asked.map((value) => ({ weight: 6, arbitrary: fc.constant(value) })),
    { weight: 1, arbitrary: odd },
  );
}

function conditionsOf({ appliesWhen = [], duties }: Rule): readonly Condition[] {
  const applies = [...appliesWhen, ...duties.flatMap((duty) => duty.appliesWhen ?? [])].map(
    ({ condition }) => condition,
  );
  const intervals = duties.flatMap(({ limits, fallback = [] }) =>
    [...limits, ...fallback].flatMap((limit) =>
      limit.kind === 'after' && limit.plus.kind === 'by_condition' ? limit.plus.options.flatMap(({ all }) => all) : [],
    ),
  );
  return [...applies, ...intervals];
}

function overrideFor(rule: Rule, duty: Duty): fc.Arbitrary<Omit<Override, 'id'>> {
  return fc.record({
    itemId: fc.constantFrom('item', null),
    ruleId: fc.constant(rule.id),
    duty: fc.constantFrom(duty.id, ...rule.duties.map(({ id }) => id)),
    period: fc.constantFrom<PeriodText[]>('P6M', 'P1Y', 'P42M', 'P200D', 'P1M3D'),
    weight: fc.constantFrom(...OVERRIDE_WEIGHTS),
    ...{ decidedBy: fc.constant('Anna Berg'), reason: fc.constant('the book'), document: fc.constant('page 12') },
    from: anyDay,
    recordedAt: anyInstant,
    ended: fc.option(fc.record({ on: anyDay, recordedAt: anyInstant }), { nil: null }),
  });
}

function vesselFor(duty: Duty): fc.Arbitrary<VesselHistory> {
  const { events } = dutyReads(duty);
  const schemes = fc.oneof(
    { weight: 4, arbitrary: fc.constant(SCHEME_IDS) },
    { weight: 1, arbitrary: fc.subarray([...SCHEME_IDS]) },
  );
  const more = fc.array(
    fc.record({
      event: fc.constantFrom(...events, 'haul_out' as const),
      on: anyDay,
      planned: fc.boolean(),
      recordedAt: anyInstant,
    }),
    { maxLength: 4 },
  );
  return fc.tuple(anyVessel, schemes, more).map(([vessel, chosen, added]) => ({
    ...vessel,
    schemes: chosen,
    events: [...vessel.events, ...added.map((each, at) => ({ ...each, id: `m${at}` }))],
  }));
}

/** All that is on record, as often as as at a day, as known at an instant, or both. */
export const anyCut = fc.oneof(fc.constant({}), fc.record({ asOf: anyDay, knownAt: anyInstant }, { requiredKeys: [] }));

export const anyCase: fc.Arbitrary<AnyCase> = fc.record({ item: anyItem, vessel: anyVessel });

const recordedOn = (text: string): RecordedDate => parseRecordedDate(text) as RecordedDate;
