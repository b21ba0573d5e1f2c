/** What is wrong with an answer, held against the notice, the thing and what was answered before. */
import type { Day } from '../calendar/day.ts';
import { answersOnRecord, type NoticeAnswer, type NoticeAnswerKind } from './answer.ts';
import type { NoticeStanding } from './judge-item.ts';
import { rangeInWords } from './match-notice.ts';
import type { SafetyNotice } from './notice.ts';
import type { NoticeProblem } from './notice-problems.ts';
import { serialWithin } from './serial-range.ts';

export type AnswerEntered = Pick<
  NoticeAnswer,
  'answer' | 'on' | 'doneBy' | 'evidence' | 'note' | 'until' | 'serialRead' | 'corrects'
> & {
  /** With `done`: another one was put in its place. */
  readonly replaced: boolean;
};

export type AnswerGround = {
  readonly notice: SafetyNotice;
  readonly answers: readonly NoticeAnswer[];
  /** `null`: it is not aboard, or of no kind that a notice names. */
  readonly standing: NoticeStanding | null;
  /** At the vessel's place. */
  readonly today: Day;
};

export function answerProblems(entered: AnswerEntered, ground: AnswerGround): NoticeProblem[] {
  return [
    ...dayProblems(entered, ground),
    ...correctionProblems(entered, ground),
    ...ASKED[entered.answer](entered, ground),
    ...strayProblems(entered),
  ];
}

function dayProblems({ on }: AnswerEntered, { notice, today }: AnswerGround): NoticeProblem[] {
  if (on > today) return [{ pointer: '/on', detail: 'lies in the future' }];
  return on < notice.issuedOn ? [{ pointer: '/on', detail: 'lies before the day of the notice' }] : [];
}

function correctionProblems({ corrects, answer }: AnswerEntered, ground: AnswerGround): NoticeProblem[] {
  const held = answersOnRecord(ground.answers);
  if (corrects !== null)
    return held.some(({ id }) => id === corrects)
      ? []
      : [{ pointer: '/corrects', detail: 'names no answer of this item to this notice that still holds' }];
  if (answer === 'reopened') return [{ pointer: '/corrects', detail: 'must name the answer that was a mistake' }];
  return ground.standing?.kind === 'settled'
    ? [{ pointer: '/corrects', detail: 'it is answered already: name the answer that this one corrects' }]
    : [];
}

/** Why there is nothing to answer; `null`: there is. A wrong answer can be corrected all the same. */
export function whyNotAsked(
  { corrects }: Pick<AnswerEntered, 'corrects'>,
  standing: NoticeStanding | null,
): string | null {
  if (corrects !== null) return null;
  if (standing === null) return 'The item is not aboard, or of no kind that the notice names.';
  return standing.kind === 'not_affected'
    ? `The notice does not cover the item as it is on record: ${standing.match.because.join('; ')}.`
    : null;
}

type Judge = (entered: AnswerEntered, ground: AnswerGround) => NoticeProblem[];

const ASKED: Record<NoticeAnswerKind, Judge> = {
  done: ({ doneBy, evidence }) => [
    ...(doneBy.capacity ? [] : [{ pointer: '/doneBy/capacity', detail: 'say in what capacity it was done' }]),
    ...(evidence === null ? [{ pointer: '/evidence', detail: 'say what shows that it was done' }] : []),
  ],
  not_affected: lookedProblems,
  deferred: deferralProblems,
  reopened: ({ note }) => (note === null ? [{ pointer: '/note', detail: 'say why the answer was a mistake' }] : []),
};

/** Where the notice names serial numbers, the one read decides; where it does not, somebody says why. */
function lookedProblems({ serialRead, note }: AnswerEntered, { notice }: AnswerGround): NoticeProblem[] {
  if (notice.serials.length === 0)
    return note === null ? [{ pointer: '/note', detail: 'say what shows that the notice does not cover it' }] : [];
  if (serialRead === null) return [{ pointer: '/serialRead', detail: 'must be read on the thing itself' }];
  switch (serialWithin(serialRead, notice.serials)) {
    case 'out':
      return [];
    case 'in':
      return note !== null && namesMore(notice)
        ? []
        : [
            {
              pointer: '/serialRead',
              detail: `is covered by the notice (${notice.serials.map(rangeInWords).join(', ')})`,
            },
          ];
    case 'cannot_tell':
      return note === null
        ? [{ pointer: '/note', detail: 'the number cannot be compared with the notice’s: say how it was settled' }]
        : [];
  }
}

/** Besides its number, something else can rule a thing out. */
const namesMore = ({ makers, models, manufactured }: SafetyNotice) =>
  makers.length > 0 || models.length > 0 || manufactured !== null;

function deferralProblems({ until, note }: AnswerEntered, { notice, today }: AnswerGround): NoticeProblem[] {
  if (notice.deadline.kind === 'before_next_use')
    return [{ pointer: '/answer', detail: 'what is asked before the next use cannot be put off' }];
  return [
    ...(until === null ? [{ pointer: '/until', detail: 'say until when' }] : []),
    ...(until !== null && until <= today ? [{ pointer: '/until', detail: 'must lie ahead' }] : []),
    ...(note === null ? [{ pointer: '/note', detail: 'say why' }] : []),
  ];
}

/** What the answer has no use for is refused, not dropped. */
function strayProblems({ answer, until, replaced, serialRead }: AnswerEntered): NoticeProblem[] {
  const settles = answer === 'done' || answer === 'not_affected';
  return [
    ...(until !== null && answer !== 'deferred' ? [{ pointer: '/until', detail: 'is only for what is put off' }] : []),
    ...(replaced && answer !== 'done' ? [{ pointer: '/replaced', detail: 'is only for what was done' }] : []),
    ...(serialRead !== null && !settles ? [{ pointer: '/serialRead', detail: 'is not asked for here' }] : []),
  ];
}
