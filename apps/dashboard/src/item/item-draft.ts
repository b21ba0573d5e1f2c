/** What somebody has typed so far about a thing aboard. */
import type { Problem } from '@garboard/client/api-problem.ts';
import type { components } from '@garboard/client/generated/api.d.ts';
import { strings } from '../strings/record.ts';

type NewItem = components['schemas']['NewItem'];

const BOXES = ['label', 'kind', 'zone', 'quantity', 'maker', 'model', 'serialNumber'] as const;
export type ItemBox = (typeof BOXES)[number];
export type ItemDraft = Readonly<Record<ItemBox, string>>;
export type ItemFaults = Partial<Record<ItemBox, string>>;

export const emptyItem: ItemDraft = {
  kind: '',
  label: '',
  zone: '',
  quantity: '1',
  maker: '',
  model: '',
  serialNumber: '',
};

export function toNewItem(draft: ItemDraft): { kind: 'ready'; body: NewItem } | { kind: 'faults'; faults: ItemFaults } {
  const quantity = Number(draft.quantity);
  const faults: ItemFaults = {
    ...(draft.label.trim() === '' && { label: strings.add.labelFault }),
    ...(draft.kind === '' && { kind: strings.add.kindFault }),
    ...(!(Number.isInteger(quantity) && quantity > 0) && { quantity: strings.add.quantityFault }),
  };
  if (Object.keys(faults).length > 0) return { kind: 'faults', faults };
  const others = (['zone', 'maker', 'model', 'serialNumber'] as const).filter((box) => draft[box].trim() !== '');
  const optional = Object.fromEntries(others.map((box) => [box, draft[box].trim()]));
  return { kind: 'ready', body: { kind: draft.kind, label: draft.label.trim(), quantity, ...optional } };
}

export function itemFaults(problem: Problem): { faults: ItemFaults; others: string[] } {
  const all = (problem.errors ?? []).map(({ pointer, detail }) => ({ box: pointer.slice(1), detail }));
  const faults = Object.fromEntries(all.filter(({ box }) => isBox(box)).map(({ box, detail }) => [box, detail]));
  const others = all.filter(({ box }) => !isBox(box)).map(({ box, detail }) => (box ? `${box}: ${detail}` : detail));
  return { faults, others: all.length === 0 ? [problem.detail ?? problem.title] : others };
}

const isBox = (text: string): text is ItemBox => BOXES.some((box) => box === text);
