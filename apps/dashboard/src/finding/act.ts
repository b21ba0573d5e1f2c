/** What can be done about a finding, and which of it comes next. */
import type { May } from '../organisation/may.ts';
import type { strings } from '../strings/finding.ts';
import type { Finding } from './finding.query.ts';

export type Act = keyof typeof strings.acts;

/** What each act does in the table of steps, and who may do it; looking and changing are always there while it is open. */
const MOVE_OF: Record<Exclude<Act, 'look' | 'change'>, { readonly move: string; readonly may: keyof May }> = {
  verify: { move: 'verified', may: 'verifyFindings' },
  report_done: { move: 'reported_done', may: 'answerFindings' },
  begin: { move: 'begun', may: 'answerFindings' },
  plan: { move: 'planned', may: 'answerFindings' },
  propose: { move: 'proposed', may: 'answerFindings' },
  defer: { move: 'deferred', may: 'putOffFindings' },
  accept: { move: 'accepted', may: 'putOffFindings' },
  enter_in_error: { move: 'entered_in_error', may: 'verifyFindings' },
  reopen: { move: 'reopened', may: 'verifyFindings' },
};

/** What usually comes next from each standing. */
const USUAL: Readonly<Record<string, readonly Act[]>> = {
  found: ['plan'],
  proposed: ['plan'],
  planned: ['report_done'],
  in_hand: ['report_done'],
  reported_done: ['verify'],
  deferred: ['look'],
  accepted: ['look'],
};

/** What has ended is due to nobody. */
export const hasEnded = ({ due }: Finding): boolean => due === undefined;

/** The acts that lead on from here for this person, what usually comes next first. */
export function actsOf(finding: Finding, may: May): Act[] {
  const cannotWait = finding.urgency === 'before_use';
  const moves = (Object.keys(MOVE_OF) as (keyof typeof MOVE_OF)[]).filter((act) => {
    const { move, may: needed } = MOVE_OF[act];
    const isLeft = act === 'defer' || act === 'accept';
    return finding.mayBe.includes(move) && may[needed] && !(isLeft && cannotWait);
  });
  const seen = finding.mayBe.includes('seen_worse') && may.answerFindings ? (['look'] as const) : [];
  const change = !hasEnded(finding) && may.answerFindings ? (['change'] as const) : [];
  const all: Act[] = [...moves.filter((act) => act !== 'enter_in_error'), ...seen, ...change];
  const last: Act[] = moves.filter((act) => act === 'enter_in_error');
  const first = usualNext(finding, all);
  return [...(first ? [first] : []), ...all.filter((act) => act !== first), ...last];
}

/** The one filled button; none where nothing is usual. */
export function usualNext({ remedy }: Finding, acts: readonly Act[]): Act | undefined {
  return USUAL[remedy.state]?.find((act) => acts.includes(act));
}
