/** A thing aboard with a life, a printed expiry or a service interval. */
import * as z from 'zod';
import { Id, Instant, pageOf, words } from '../shared.ts';

/** Values a rule asks for and no fact holds: season months, stored dry, approved for extended intervals. */
export const Attributes = z
  .record(z.string().regex(/^[a-z][A-Za-z0-9]{0,59}$/), z.union([z.string().max(200), z.number(), z.boolean()]))
  .refine((all) => Object.keys(all).length <= 40, 'at most 40 attributes')
  .meta({ id: 'Attributes', description: 'Values a rule asks for and no fact holds; each rule lists those that it reads.', example: { seasonMonths: 6 } });

export const ItemKindCode = z
  .string()
  .regex(/^[a-z][a-z0-9_]{0,59}$/)
  .meta({ id: 'ItemKindCode', description: 'An entry of `/v1/item-kinds`.', example: 'gas_hose' });

const particulars = {
  label: words(160).meta({ example: 'Gas hose, cooker' }),
  zone: words(60).optional().meta({ example: 'gas_locker' }),
  quantity: z.int().min(1).max(10_000).default(1),
  maker: words(120).optional(),
  model: words(120).optional(),
  serialNumber: words(120).optional(),
  attributes: Attributes.optional(),
};

export const NewItem = z.strictObject({ kind: ItemKindCode, ...particulars }).meta({ id: 'NewItem' });
export type NewItem = z.infer<typeof NewItem>;

export const ItemChange = z
  .strictObject({
    label: particulars.label.optional(),
    zone: words(60).nullish(),
    quantity: z.int().min(1).max(10_000).optional(),
    maker: words(120).nullish(),
    model: words(120).nullish(),
    serialNumber: words(120).nullish(),
    attributes: Attributes.optional(),
  })
  .meta({ id: 'ItemChange' });
export type ItemChange = z.infer<typeof ItemChange>;

export const Item = z
  .object({
    id: Id,
    vesselId: Id,
    kind: ItemKindCode,
    ...particulars,
    quantity: z.int(),
    attributes: Attributes,
    withdrawn: z.boolean(),
    createdAt: Instant,
    version: z.int(),
  })
  .meta({ id: 'Item' });
export type Item = z.infer<typeof Item>;
export const ItemPage = pageOf(Item, 'ItemPage');
