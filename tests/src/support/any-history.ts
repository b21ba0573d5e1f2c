/** Any history of any kind of thing under all schemes at once, for properties. */

import { type Day, dayOf, formatDay } from '@garboard/domain/calendar/day.ts';
import type { Attributes } from '@garboard/domain/item/attribute.ts';
import { CAPACITIES, FACT_KINDS, type Fact, OUTCOMES, TESTS } from '@garboard/domain/item/fact.ts';
import { recorded } from '@garboard/domain/item/facts.test-support.ts';
import { ITEM_KIND_IDS } from '@garboard/domain/item/item-kind.ts';
import type { Cut, ItemHistory, VesselHistory } from '@garboard/domain/item/work-out-obligations.ts';
import { SCHEME_IDS } from '@garboard/domain/rule/scheme.ts';
import { type Situation, VESSEL_EVENTS, type VesselEvent } from '@garboard/domain/vessel/situation.ts';
import fc from 'fast-check';

export const RUNS = { numRuns: 400, seed: 1936 };
const FIRST = dayOf(2005, 1, 1);
export const LAST = dayOf(2026, 6, 15);
export const NOW: Cut = { asOf: LAST, knownAt: '2026-06-15T23:00:00Z' };

export const anyDay = fc.integer({ min: FIRST, max: LAST }) as fc.Arbitrary<Day>;
const anyDate = fc.tuple(anyDay, fc.constantFrom(4, 7, 10)).map(([day, length]) => formatDay(day).slice(0, length));
export const anyInstant = anyDay.map((day) => `${formatDay(day)}T12:00:00Z`);

export const anyFact: fc.Arbitrary<Omit<Fact, 'id'>> = fc
  .record({
    fact: fc.constantFrom(...FACT_KINDS),
    on: anyDate,
    outcome: fc.constantFrom('passed', 'passed', 'passed', ...OUTCOMES),
    test: fc.option(fc.constantFrom(...TESTS), { nil: undefined }),
    capacity: fc.option(fc.constantFrom(...CAPACITIES), { nil: undefined }),
    readOn: fc.option(anyDay, { nil: undefined }),
    hours: fc.integer({ min: 0, max: 4000 }),
    until: fc.option(anyDay, { nil: undefined }),
    recordedAt: anyInstant,
  })
  .map(({ on, test, capacity, readOn, until, hours, ...rest }) => ({
    ...rest,
    on: recorded(on),
    evidence: 'record',
    ...(test && { test }),
    ...(capacity && { doneBy: { capacity } }),
    ...(readOn && { readOn }),
    ...(until && { until }),
    ...(rest.fact === 'meter' && { reading: { value: hours, unit: 'hours' as const } }),
  }));

const anyFacts = fc
  .array(anyFact, { maxLength: 9 })
  .map((facts) => facts.map((fact, index): Fact => ({ ...fact, id: `f${index}` })));

const anyAttributes: fc.Arbitrary<Attributes> = fc.record(
  {
    makerIntervalMonths: fc.integer({ min: 1, max: 120 }),
    extendedInterval: fc.boolean(),
    standard: fc.constantFrom('solas', 'iso_9650', 'other'),
    seasonMonths: fc.integer({ min: 1, max: 12 }),
    conventionShip: fc.constant(false),
    operatesOnlyMonthsMeanDailyMinAbove0C: fc.constant(true),
    dryStoredOffSeason: fc.constant(true),
    cylinderTestValidTo: anyDate,
    packedContentsExpireOn: anyDate,
    pressure: fc.constantFrom('stored_pressure', 'cartridge'),
    expiryLessOneDay: fc.boolean(),
    anniversaryDate: anyDate,
    passengerShip: fc.boolean(),
    oilChangeHours: fc.integer({ min: 50, max: 300 }),
    impellerHours: fc.integer({ min: 50, max: 300 }),
  },
  { requiredKeys: [] },
);

export const anyItem: fc.Arbitrary<ItemHistory> = fc.record({
  kind: fc.constantFrom(...ITEM_KIND_IDS),
  attributes: anyAttributes,
  facts: anyFacts,
});

const anySituation = fc.record({
  from: anyDay,
  place: fc.constantFrom('afloat' as const, 'ashore' as const),
  use: fc.constantFrom('in_commission' as const, 'laid_up' as const, 'out_of_service' as const),
  dismantled: fc.boolean(),
  underRepair: fc.boolean(),
  recordedAt: anyInstant,
});

const anyEvent = fc.record({
  event: fc.constantFrom(...VESSEL_EVENTS),
  on: anyDay,
  planned: fc.boolean(),
  recordedAt: anyInstant,
});

export const anyVessel: fc.Arbitrary<VesselHistory> = fc
  .record({ situations: fc.array(anySituation, { maxLength: 4 }), events: fc.array(anyEvent, { maxLength: 4 }) })
  .map(({ situations, events }) => ({
    schemes: SCHEME_IDS,
    situations: situations.map((each, index): Situation => ({ ...each, id: `s${index}` })),
    events: events.map((each, index): VesselEvent => ({ ...each, id: `e${index}` })),
  }));
