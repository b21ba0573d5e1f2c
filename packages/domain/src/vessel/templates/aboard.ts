import { findItemKind, type ItemKindId } from '../../item/item-kind.ts';
import type { TemplateItem } from '../template.ts';

/** One line of a template; without `zone`, where such a thing usually is. */
export function aboard(kind: ItemKindId, label: string, { zone, quantity = 1 }: Partial<Where> = {}): TemplateItem {
  return { kind, label, zone: zone ?? usualZone(kind), quantity };
}

type Where = Pick<TemplateItem, 'zone' | 'quantity'>;

function usualZone(kind: ItemKindId): string {
  const found = findItemKind(kind);
  if (!found) throw new Error(`the catalogue has no ${kind}`);
  return found.zone;
}
