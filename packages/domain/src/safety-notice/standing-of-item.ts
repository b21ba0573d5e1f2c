/** How one entry of a vessel's list stands under one notice: still open, answered, or of no concern. */
import type { Fact } from '../item/fact.ts';
import type { ItemKindId } from '../item/item-kind.ts';
import { type Cut, unitAboard } from '../item/unit-aboard.ts';
import { answersOnRecord, type NoticeAnswer } from './answer.ts';
import { judgeItem, type NoticeStanding } from './judge-item.ts';
import type { SafetyNotice } from './notice.ts';
import type { PlateHistory } from './plate.ts';

export type ItemStanding = Exclude<NoticeStanding, { kind: 'not_affected' }>;

/**
 * `null`: the notice does not concern it then. What is no longer aboard, or is asked no longer, keeps the answer
 * that was given.
 */
export function standingOfItem(
  notice: SafetyNotice,
  answers: readonly NoticeAnswer[],
  plate: PlateHistory,
  { kind, facts }: { readonly kind: ItemKindId; readonly facts: readonly Fact[] },
  cut: Cut,
): ItemStanding | null {
  const unit = unitAboard(facts, cut);
  const standing = unit.kind === 'aboard' ? judgeItem(notice, answers, plate, { kind, facts: unit.facts }, cut) : null;
  if (standing && standing.kind !== 'not_affected') return standing;
  const by = answersOnRecord(answers, cut).findLast(({ answer }) => answer === 'done' || answer === 'not_affected');
  return by ? { kind: 'settled', by } : null;
}
