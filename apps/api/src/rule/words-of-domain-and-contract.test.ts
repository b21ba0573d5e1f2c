import { CAPACITY_CODES, FACT_CODES, TEST_CODES } from '@garboard/contract/item/fact.ts';
import { NewOverride } from '@garboard/contract/rule/override.ts';
import { ItemKind } from '@garboard/contract/rule/rule.ts';
import { EVENT_CODES } from '@garboard/contract/vessel/situation.ts';
import { SchemeCode } from '@garboard/contract/vessel/vessel.ts';
import { CAPACITIES, FACT_KINDS, TESTS } from '@garboard/domain/item/fact.ts';
import { ITEM_CLASSES } from '@garboard/domain/item/item-kind.ts';
import { OVERRIDE_WEIGHTS } from '@garboard/domain/rule/override.ts';
import { SCHEME_IDS } from '@garboard/domain/rule/scheme.ts';
import { VESSEL_EVENTS } from '@garboard/domain/vessel/situation.ts';
import { expect, it } from 'vitest';

it.each([
  ['facts', FACT_CODES, FACT_KINDS],
  ['tests', TEST_CODES, TESTS],
  ['capacities', CAPACITY_CODES, CAPACITIES],
  ['events', EVENT_CODES, VESSEL_EVENTS],
  ['schemes', SchemeCode.options, SCHEME_IDS],
  ['weights of one’s own figure', NewOverride.shape.weight.options, OVERRIDE_WEIGHTS],
  ['classes of item', ItemKind.shape.itemClass.options, ITEM_CLASSES],
])('the %s that the API takes are those that the rules know', (_, promised: readonly string[], known) => {
  expect([...promised]).toEqual([...known]);
});
