/** Short ways to a vessel with things aboard, through the actions and nothing else. */

import type { ActionContext } from '@garboard/actions/context.ts';
import { addItem, type ItemAdded } from '@garboard/actions/item/add-item.ts';
import { type FactInput, type FactRecorded, recordFact } from '@garboard/actions/item/record-fact.ts';
import { type NewOverride, setOverride } from '@garboard/actions/rule/set-override.ts';
import { createVessel } from '@garboard/actions/vessel/create-vessel.ts';
import type { ItemParticulars } from '@garboard/db/item/item-record.ts';
import type { OverrideRecord } from '@garboard/db/rule/override-record.ts';
import type { Particulars, VesselRecord } from '@garboard/db/vessel/vessel-record.ts';
import type { SchemeId } from '@garboard/domain/rule/scheme.ts';
import { accepted, particulars } from './organisation.ts';

export async function aVessel(
  ctx: ActionContext,
  schemes: readonly SchemeId[] = [],
  name = 'Teal',
  more: Partial<Particulars> = {},
): Promise<VesselRecord> {
  return accepted(await createVessel(ctx, { ...particulars(name, schemes), ...more }));
}

export async function anItem(
  ctx: ActionContext,
  vesselId: string,
  kind: string,
  label: string = kind,
  more: Partial<ItemParticulars> = {},
): Promise<ItemAdded> {
  const nothing = { zone: null, quantity: 1, maker: null, model: null, serialNumber: null, attributes: {} };
  return accepted(await addItem(ctx, { ...nothing, vesselId, kind, label, ...more }));
}

/** A statement with only what matters said. */
export function statement(said: Partial<FactInput> & Pick<FactInput, 'fact' | 'on'>): FactInput {
  return {
    outcome: 'passed',
    test: null,
    doneBy: null,
    evidence: 'record',
    until: null,
    reading: null,
    readOn: null,
    note: null,
    corrects: null,
    ...said,
  };
}

export async function state(
  ctx: ActionContext,
  itemId: string,
  said: Partial<FactInput> & Pick<FactInput, 'fact' | 'on'>,
): Promise<FactRecorded> {
  return accepted(await recordFact(ctx, { itemId, fact: statement(said) }));
}

/** The maker's four years for every gas hose aboard, unless told otherwise. */
export async function anOverride(
  ctx: ActionContext,
  vesselId: string,
  more: Partial<NewOverride> = {},
): Promise<OverrideRecord> {
  const hose = { itemId: null, ruleId: 'lpg-hose', duty: 'replacement', period: 'P4Y', weight: 'maker' } as const;
  const said = { decidedBy: 'Anna Berg', reason: 'the maker says so', document: 'Data sheet H-88', from: '2026-03-01' };
  return accepted(await setOverride(ctx, { ...hose, ...said, vesselId, ...more }));
}
