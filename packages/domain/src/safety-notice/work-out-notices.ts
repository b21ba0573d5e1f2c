/** The obligations that open notices put on a thing: one a notice, until it is answered. */
import type { Day } from '../calendar/day.ts';
import { dayInWords } from '../calendar/words.ts';
import type { Explanation, Obligation } from '../item/obligation.ts';
import type { Cut } from '../item/unit-aboard.ts';
import type { Action, Source } from '../rule/rule.ts';
import { isOfUnit, type NoticeAnswer } from './answer.ts';
import { judgeItem, type NoticeStanding, type UnderNotices, type UnitFacts } from './judge-item.ts';
import { deadlineDay, ruleIdOfNotice, type SafetyNotice } from './notice.ts';

/** The one duty that a notice puts on a thing, certain or not: it is answered once. */
const DUTY = 'answer';

export function workOutNotices({ notices, plate }: UnderNotices, unit: UnitFacts, cut: Cut): readonly Obligation[] {
  return notices.flatMap(({ notice, answers }) => {
    const standing = judgeItem(notice, answers, plate, unit, cut);
    return standing?.kind === 'open' ? [obligationOf(notice, standing)] : [];
  });
}

type Open = Extract<NoticeStanding, { kind: 'open' }>;

function obligationOf(notice: SafetyNotice, open: Open): Obligation {
  const on = deadlineDay(notice);
  return {
    ruleId: ruleIdOfNotice(notice.id),
    duty: DUTY,
    scheme: 'maker',
    weight: notice.weight,
    action: actionOf(notice, open),
    // It is asked from its own day on: no lead time of a round that comes again. House convention, no source.
    outcome: { kind: 'dated', dueFrom: notice.issuedOn, dueOn: on, overdueAfter: on, windows: [] },
    explanation: explain(notice, open, on),
  };
}

function actionOf({ action, title }: SafetyNotice, { match }: Open): Action {
  return match.kind === 'affected' ? action : { kind: 'inspect', words: `Look at the plate: “${title}” may cover it` };
}

function explain(notice: SafetyNotice, open: Open, on: Day): Explanation {
  const { match } = open;
  return {
    sentence: [sentenceOf(notice, open, on), ...deferralOf(open)].join(' '),
    source: sourceOf(notice),
    binds: { limit: limitOf(notice), on, factIds: [] },
    alsoCounted: [],
    setAside: [],
    assumed: [],
    doubts: doubtsOf(open),
    missing: match.kind === 'may_be_affected' ? match.missing : [],
    wouldChangeIt: [],
    notice: { id: notice.id, match: match.kind },
  };
}

/** Entered from the notice by whoever keeps the register. */
function sourceOf({ publisher, title, reference, document, address }: SafetyNotice): Source {
  const clause = [reference, document].filter(Boolean).join(', ');
  return { publication: `${publisher}, “${title}”`, clause: clause || null, address, status: 'second_hand' };
}

function sentenceOf(notice: SafetyNotice, { match }: Open, on: Day): string {
  const named = `The notice of ${dayInWords(notice.issuedOn)} from ${notice.publisher}`;
  const hazard = `What can happen: ${closed(notice.hazard)}`;
  switch (match.kind) {
    case 'affected': {
      const because = match.because.length > 0 ? match.because.join('; ') : 'it names every one of this kind';
      return `${named} covers it: ${because}. ${hazard} ${closed(notice.action.words)} ${byWhen(notice, on)}`;
    }
    case 'may_be_affected':
      return `${named} may cover it: ${match.open.join('; ')}. ${hazard} Look at the thing itself; if it is covered: ${closed(notice.action.words)} ${byWhen(notice, on)}`;
  }
}

function byWhen({ deadline, weight }: SafetyNotice, on: Day): string {
  const whose = weight === 'law' ? 'An authority has ordered it' : 'The maker asks for it';
  return deadline.kind === 'before_next_use'
    ? `${whose} before the next use, from ${dayInWords(on)} on.`
    : `${whose} by ${dayInWords(on)}.`;
}

function limitOf({ deadline }: SafetyNotice): string {
  switch (deadline.kind) {
    case 'on':
      return 'the day that the notice names';
    case 'days_after_issue':
      return `${deadline.days} days after the notice`;
    case 'before_next_use':
      return 'before the next use, from the day of the notice';
  }
}

/** Said, and moves nothing. */
function deferralOf({ answers }: Open): string[] {
  const last = answers.at(-1);
  if (last?.answer !== 'deferred' || last.until === null) return [];
  const why = last.note ? `: “${last.note}”` : '';
  return [`Put off by ${last.doneBy.name ?? 'somebody'} until ${dayInWords(last.until)}${why}. The date stays.`];
}

function doubtsOf({ answers, unitSince, serialOfEarlier, match }: Open): string[] {
  const replaced = unitSince === null ? '' : dayInWords(unitSince);
  const earlier = serialOfEarlier
    ? [
        `Serial number ${serialOfEarlier} was on record before it was replaced on ${replaced}: it is taken to be the old one’s.`,
      ]
    : [];
  const given = answers.filter(({ answer }) => answer !== 'deferred' && answer !== 'reopened');
  const notOfThis = given.map(
    (each) => `It was answered on ${dayInWords(each.on)}, but of another thing: ${whichThing(each, unitSince)}.`,
  );
  return [...earlier, ...notOfThis, ...(match.kind === 'may_be_affected' ? match.open.map(doubtful) : [])];
}

function whichThing(answer: NoticeAnswer, unitSince: Day | null): string {
  const byDay = unitSince !== null && !isOfUnit(answer, { serialNumber: null, since: unitSince });
  return byDay ? `it was replaced on ${dayInWords(unitSince)}` : `serial number ${answer.serialThen}`;
}

const doubtful = (open: string) => `Not settled: ${open}.`;
const closed = (words: string) => (/[.!?]$/.test(words) ? words : `${words}.`);
