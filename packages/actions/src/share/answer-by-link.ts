/** An owner says yes or no to what putting something right may cost, in the very words that were shown. */
import { loadOpenFindings } from '@garboard/db/finding/findings.ts';
import type { FindingView } from '@garboard/db/finding/list-findings.ts';
import { inOrganisation } from '@garboard/db/scope.ts';
import { offerOf } from '@garboard/domain/finding/words.ts';
import { addEntry, entryOf, lockFinding, type StepRefusal, told } from '../finding/take-step.ts';
import { refused, type Written } from '../result.ts';
import { write } from '../write.ts';
import { type ByLink, enterByLink } from './enter-by-link.ts';

export type OwnersAnswer = {
  /** The finding's number aboard. */
  readonly number: number;
  readonly yes: boolean;
  readonly name: string;
  /** As it was shown. Is it no longer what is offered, the answer is refused. */
  readonly offer: string;
  readonly words: string | null;
};

export async function answerByLink(
  by: ByLink,
  { number, ...said }: OwnersAnswer,
): Promise<Written<FindingView, StepRefusal>> {
  const entered = await enterByLink(by, 'owner');
  const [vesselId] = entered && entered.link.vesselIds !== 'all' ? entered.link.vesselIds : [];
  if (!entered || vesselId === undefined) return refused({ kind: 'not_found' });
  const { ctx } = entered;
  const open = await inOrganisation(ctx.db, ctx, (tx) => loadOpenFindings(tx, vesselId));
  const found = open.find((each) => each.number === number && each.finding.estimate !== null);
  if (!found) return refused({ kind: 'not_found' });
  return write(ctx, 'answer_findings', async (write) => {
    const locked = await lockFinding(write, { findingId: found.id, expectedVersion: found.version });
    if (!locked.ok) return locked;
    const { record, ground } = locked.value;
    if (offerOf(record.finding) !== said.offer) return refused({ kind: 'conflict', detail: CHANGED });
    const entry = entryOf(write, { step: 'owner_answered', ...said }, ground.today);
    return told(write, await addEntry(write, locked.value, entry));
  });
}

const CHANGED = 'The work or its estimate was changed since it was shown. Look again, and answer what is offered now.';
