/** What somebody has typed so far about a thing aboard. */
import type { Problem } from '@garboard/client/api-problem.ts';
import type { components } from '@garboard/client/generated/api.d.ts';
import { strings } from '../strings/record.ts';
import { sentenceCase } from '../ui/number-words.ts';
import { type AttributeDraft, draftOfAttributes, readAttributes } from './attribute-draft.ts';

type NewItem = components['schemas']['NewItem'];
type ItemChange = components['schemas']['ItemChange'];

const BOXES = ['label', 'kind', 'zone', 'quantity', 'maker', 'model', 'serialNumber'] as const;
export type ItemBox = (typeof BOXES)[number];
export type ItemDraft = Readonly<Record<ItemBox, string>> & { readonly attributes: AttributeDraft };
export type ItemFaults = Partial<Record<ItemBox, string>> & { readonly attributes?: Readonly<Record<string, string>> };
type Attribute = components['schemas']['Attribute'];
type Item = components['schemas']['Item'];

export const emptyItem: ItemDraft = {
  kind: '',
  label: '',
  zone: '',
  quantity: '1',
  maker: '',
  model: '',
  serialNumber: '',
  attributes: {},
};

export function draftOfItem(item: Item, known: readonly Attribute[]): ItemDraft {
  const { kind, label, zone = '', quantity, maker = '', model = '', serialNumber = '' } = item;
  const attributes = draftOfAttributes(known, item.attributes);
  return { kind, label, zone, quantity: String(quantity), maker, model, serialNumber, attributes };
}

type Ready<Body> = { kind: 'ready'; body: Body } | { kind: 'faults'; faults: ItemFaults };
const OPTIONAL = ['zone', 'maker', 'model', 'serialNumber'] as const;

/** `known`: what rules for the kind read. */
export function toNewItem(draft: ItemDraft, known: readonly Attribute[]): Ready<NewItem> {
  const { values, faults } = readDraft(draft, known);
  if (faults) return { kind: 'faults', faults };
  const others = OPTIONAL.filter((box) => draft[box].trim() !== '');
  const optional = Object.fromEntries(others.map((box) => [box, draft[box].trim()]));
  const attributes = Object.keys(values).length > 0 && { attributes: values };
  const body = { kind: draft.kind, label: draft.label.trim(), quantity: Number(draft.quantity) };
  return { kind: 'ready', body: { ...body, ...optional, ...attributes } };
}

/** Every particular, since the form shows them all; what it does not show of the attributes is kept. */
export function toItemChange(draft: ItemDraft, known: readonly Attribute[], item: Item): Ready<ItemChange> {
  const { values, faults } = readDraft(draft, known);
  if (faults) return { kind: 'faults', faults };
  const shown = new Set(known.map(({ name }) => name));
  const kept = Object.entries(item.attributes).filter(([name]) => !shown.has(name));
  const optional = Object.fromEntries(OPTIONAL.map((box) => [box, draft[box].trim() || null]));
  const attributes = { ...Object.fromEntries(kept), ...values };
  return {
    kind: 'ready',
    body: { label: draft.label.trim(), quantity: Number(draft.quantity), ...optional, attributes },
  };
}

function readDraft(draft: ItemDraft, known: readonly Attribute[]) {
  const quantity = Number(draft.quantity);
  const { values, faults: unread } = readAttributes(known, draft.attributes);
  const faults: ItemFaults = {
    ...(draft.label.trim() === '' && { label: strings.add.labelFault }),
    ...(draft.kind === '' && { kind: strings.add.kindFault }),
    ...(!(Number.isInteger(quantity) && quantity > 0) && { quantity: strings.add.quantityFault }),
    ...(Object.keys(unread).length > 0 && { attributes: unread }),
  };
  return { values, faults: Object.keys(faults).length > 0 ? faults : null };
}

/** Each box that is at fault, as a summary names it. */
export function namedFaults({ attributes = {}, ...boxes }: ItemFaults, known: readonly Attribute[]) {
  const named = Object.entries(boxes).map(([box, fault]) => ({
    ...{ id: `item-${box}`, name: strings.add[box as ItemBox] },
    fault,
  }));
  const ofAttributes = Object.entries(attributes).map(([name, fault]) => ({
    ...{ id: `item-attributes-${name}`, fault },
    name: sentenceCase(known.find((each) => each.name === name)?.words ?? name),
  }));
  return [...named, ...ofAttributes];
}

export function itemFaults(problem: Problem): { faults: ItemFaults; others: string[] } {
  const all = (problem.errors ?? []).map(({ pointer, detail }) => ({ box: pointer.slice(1), detail }));
  const attributes = Object.fromEntries(
    all.filter(({ box }) => box.startsWith(ATTRIBUTE)).map(({ box, detail }) => [box.slice(ATTRIBUTE.length), detail]),
  );
  const faults = {
    ...Object.fromEntries(all.filter(({ box }) => isBox(box)).map(({ box, detail }) => [box, detail])),
    ...(Object.keys(attributes).length > 0 && { attributes }),
  };
  const others = all
    .filter(({ box }) => !isBox(box) && !box.startsWith(ATTRIBUTE))
    .map(({ box, detail }) => (box ? `${box}: ${detail}` : detail));
  return { faults, others: all.length === 0 ? [problem.detail ?? problem.title] : others };
}

const ATTRIBUTE = 'attributes/';
const isBox = (text: string): text is ItemBox => BOXES.some((box) => box === text);
