import type { ItemToAdd } from '@garboard/actions/item/put-aboard.ts';
import type { NewItem } from '@garboard/contract/item/item.ts';
import { given } from '../request/given.ts';

const NOTHING_KNOWN = { zone: null, maker: null, model: null, serialNumber: null, attributes: {} };

/** What the contract leaves out is, in a record, not known. */
export function itemInput(item: NewItem): ItemToAdd {
  return { ...NOTHING_KNOWN, ...given(item) };
}
