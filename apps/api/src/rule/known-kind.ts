/** A kind in a question: one that the catalogue does not have would answer "nothing", which reads as "nothing is wrong". */
import { ItemKindCode } from '@garboard/contract/item/item.ts';
import { findItemKind } from '@garboard/domain/item/item-kind.ts';

export const KnownKind = ItemKindCode.refine(
  (kind) => findItemKind(kind) !== undefined || !ItemKindCode.safeParse(kind).success,
  'is no kind of item in the catalogue; /v1/item-kinds lists them',
);
