/** What the columns hold in place of words: small whole numbers, the same in every run of one build. */
import { ATTRIBUTE_IDS, type AttributeId } from '../../item/attribute.ts';
import {
  CAPACITIES,
  type Capacity,
  FACT_KINDS,
  type FactKind,
  OUTCOMES,
  TESTS,
  type TestKind,
} from '../../item/fact.ts';
import { ITEM_KIND_IDS, type ItemKindId } from '../../item/item-kind.ts';
import { VESSEL_EVENTS, type VesselEventKind } from '../../vessel/situation.ts';
import { SCHEME_IDS, type SchemeId, WEIGHTS, type Weight } from '../scheme.ts';

/** No day: later than every day, so that the earliest of several needs no question. */
export const NO_DAY = 0x7fff_ffff;
/** A limit that does not count, as nothing has happened that would make it. */
export const NOT_OWED = -0x8000_0000;
/** No such row. */
export const NONE = -1;

export const kindCode = codesOf<ItemKindId>(ITEM_KIND_IDS);
export const factCode = codesOf<FactKind>(FACT_KINDS);
export const outcomeCode = codesOf<string>(OUTCOMES);
export const eventCode = codesOf<VesselEventKind>(VESSEL_EVENTS);
export const attributeCode = codesOf<AttributeId>(ATTRIBUTE_IDS);
export const weightCode = codesOf<Weight>(WEIGHTS);
const schemeCode = codesOf<SchemeId>(SCHEME_IDS);
const testAt = codesOf<TestKind>(TESTS);
const capacityAt = codesOf<Capacity>(CAPACITIES);

export const PASSED = outcomeCode('passed');
export const NOT_SAID = 0;

/** From one on; nought where it is not said which. */
export const testCode = (test: TestKind | null): number => (test === null ? NOT_SAID : testAt(test) + 1);
export const capacityCode = (capacity: Capacity | null): number =>
  capacity === null ? NOT_SAID : capacityAt(capacity) + 1;

const TEST_CODES = TESTS.length + 1;
export const ACT_CODES = FACT_KINDS.length * TEST_CODES;

/** An act and which test it was, in one number. */
export const actCode = (fact: number, test: number): number => fact * TEST_CODES + test;

/** A bit for each of them. */
export const factBits = (facts: readonly FactKind[]): number => bitsOf(facts.map(factCode));
export const eventBits = (events: readonly VesselEventKind[]): number => bitsOf(events.map(eventCode));
export const schemeBits = (schemes: readonly SchemeId[]): number => bitsOf(schemes.map(schemeCode));

function bitsOf(codes: readonly number[]): number {
  return codes.reduce((bits, code) => bits | (1 << code), 0);
}

/** A word that is not in the list is a fault: the columns are filled from what was checked at the door. */
function codesOf<Word extends string>(words: readonly Word[]): (word: Word) => number {
  const codes = new Map(words.map((word, code) => [word, code]));
  return (word) => {
    const code = codes.get(word);
    if (code === undefined) throw new Error(`not known: ${word}`);
    return code;
  };
}
