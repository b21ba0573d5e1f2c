/** One thing aboard, with what nobody wrote down left blank. */
import { findItemKind, type ItemKindId } from '@garboard/domain/item/item-kind.ts';
import type { Lot } from '../history.ts';
import { chanceOf, fortuneOf, type Logbook } from '../logbook.ts';
import type { FactPlan, ItemPlan } from '../plan.ts';

export type Particular = Partial<Omit<ItemPlan, 'kind' | 'label' | 'facts'>>;

export function thing(kind: ItemKindId, label: string, facts: readonly FactPlan[], more: Particular = {}): ItemPlan {
  return {
    kind,
    label,
    zone: findItemKind(kind)?.zone ?? null,
    quantity: 1,
    maker: null,
    model: null,
    serialNumber: null,
    attributes: {},
    facts: facts.toSorted((a, b) => a.learnedOn - b.learnedOn),
    ...more,
  };
}

/** Draws how the thing stands today from the vessel's luck. */
export function lotOf(log: Logbook, label: string): Lot {
  const random = chanceOf(log, label);
  return { log, random, fortune: fortuneOf(random, log.luck) };
}
