/** A thing aboard with a life, a printed expiry or a service interval. */
import * as z from 'zod';
import { Id, Instant, orNull, PRINTABLE, pageOf, words } from '../shared.ts';

const AttributeValue = z.union(
  [z.string().max(200).regex(PRINTABLE, 'must not contain control characters'), z.number(), z.boolean()],
  'must be a text of at most 200 characters, a number, or true or false',
);

/** Values a rule asks for and no fact holds: season months, stored dry, approved for extended intervals. */
export const Attributes = z
  .record(z.string().regex(/^[a-z][A-Za-z0-9]{0,59}$/, 'is not the name of an attribute'), AttributeValue)
  .refine((all) => Object.keys(all).length <= 40, 'must be at most 40 attributes')
  .meta({
    id: 'Attributes',
    description: 'Values a rule asks for and no fact holds; each rule lists those that it reads.',
    example: { seasonMonths: 6 },
  });

export const ItemKindCode = z
  .string()
  .regex(/^[a-z][a-z0-9_]{0,59}$/, 'must be the id of an entry of /v1/item-kinds')
  .meta({ id: 'ItemKindCode', description: 'An entry of `/v1/item-kinds`.', example: 'gas_hose' });

const label = words(160).meta({ example: 'Gas hose, cooker' });
const quantity = z.int().min(1).max(10_000);

const particulars = {
  label,
  zone: words(60).optional().meta({ description: 'Where aboard.', example: 'gas locker' }),
  quantity: quantity.default(1),
  maker: words(120).optional(),
  model: words(120).optional(),
  serialNumber: words(120).optional(),
  attributes: Attributes.optional(),
};

export const NewItem = z.strictObject({ kind: ItemKindCode, ...particulars }).meta({
  id: 'NewItem',
  example: { kind: 'liferaft', label: 'Liferaft, 6 persons', zone: 'on deck', attributes: { seasonMonths: 6 } },
});
export type NewItem = z.infer<typeof NewItem>;

const AT_ONCE = 100;

export const NewItems = z.strictObject({ items: z.array(NewItem).min(1).max(AT_ONCE) }).meta({
  id: 'NewItems',
  description: 'Things for one vessel, all of them or none. A fault points at its row: `/items/3/kind`.',
  example: {
    items: [
      { kind: 'gas_hose', label: 'Gas hose, cooker', zone: 'galley' },
      { kind: 'hand_flare', label: 'Hand flares, red', zone: 'cockpit', quantity: 4 },
    ],
  },
});

/** A change of particulars: what is absent stays, `null` takes it away. */
export const ItemChange = z
  .strictObject({
    label: label.optional(),
    zone: orNull(words(60)).optional(),
    quantity: quantity.optional(),
    maker: orNull(words(120)).optional(),
    model: orNull(words(120)).optional(),
    serialNumber: orNull(words(120)).optional(),
    attributes: Attributes.optional(),
  })
  .meta({
    id: 'ItemChange',
    description: 'What is absent stays; `null` takes it away. `attributes` are replaced whole.',
    example: { serialNumber: 'R-4471', zone: null },
  });
export type ItemChange = z.infer<typeof ItemChange>;

export const Item = z
  .object({
    id: Id,
    vesselId: Id,
    kind: ItemKindCode,
    ...particulars,
    quantity: z.int(),
    attributes: Attributes,
    withdrawn: z.boolean().meta({ description: 'Taken out of use by a `withdrawn` fact: it has no obligations.' }),
    createdAt: Instant,
    version: z.int().meta({ description: 'Grows with every change and every fact; its `ETag`.' }),
  })
  .meta({
    id: 'Item',
    example: {
      id: '0198c5a3-11d2-7f40-8b6e-0c9d3e2f1a4b',
      vesselId: '0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a',
      kind: 'liferaft',
      label: 'Liferaft, 6 persons',
      zone: 'on deck',
      quantity: 1,
      attributes: { seasonMonths: 6 },
      withdrawn: false,
      createdAt: '2026-11-25T08:12:00Z',
      version: 2,
    },
  });
export type Item = z.infer<typeof Item>;
export const ItemPage = pageOf(Item, 'ItemPage');
export type ItemPage = z.infer<typeof ItemPage>;

export const AddedItems = z.object({ items: z.array(Item) }).meta({ id: 'AddedItems' });
export type AddedItems = z.infer<typeof AddedItems>;
