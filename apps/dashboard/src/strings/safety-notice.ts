/** Words of makers' safety notices: the list, one notice, its form and the answers to it. */
import type { components } from '@garboard/client/generated/api.d.ts';
import { counted, sentenceCase } from '../ui/number-words.ts';

type Schemas = components['schemas'];
export type NoticeState = Schemas['NoticeStateCode'];
export type NoticeAnswerCode = Schemas['NoticeAnswerCode'];
export type NoticeActionKind = Schemas['NoticeAction']['kind'];
export type DeadlineKind = Schemas['NoticeDeadline']['kind'];

export const strings = {
  list: {
    title: 'Which makers’ notices are not yet answered',
    answer: (waiting: number, notices: number) =>
      waiting === 0
        ? 'Every notice entered here is answered for every thing that it may cover.'
        : `${sentenceCase(counted(waiting, 'thing waits', 'things wait'))} for an answer under ${counted(notices, 'notice', 'notices')}.`,
    caution:
      'Only what is entered here is matched. Makers and authorities publish notices elsewhere: look for them there, too.',
    enter: 'Enter a notice',
    filters: 'Which notices to show',
    state: 'shown',
    any: 'every notice',
    waiting: 'Reading the notices …',
    failed: 'The notices could not be read',
    empty: 'No notice answers to these words.',
    emptyHow: 'Enter one when a maker writes: everything aboard that it covers is found at once.',
    caption: 'Safety notices, the latest first',
    columns: {
      notice: 'Notice',
      issued: 'Of',
      due: 'By',
      waiting: 'To be answered',
      look: 'To be looked at',
      answered: 'Answered',
    },
  },
  states: { open: 'open', answered: 'answered', withdrawn: 'withdrawn' } satisfies Record<NoticeState, string>,
  one: {
    back: 'All notices',
    waiting: 'Reading the notice …',
    failed: 'The notice could not be read',
    sentence: (waiting: number, vessels: number) =>
      waiting === 0
        ? 'Nothing aboard waits for an answer to it.'
        : `${sentenceCase(counted(waiting, 'thing', 'things'))} on ${counted(vessels, 'vessel', 'vessels')} ${waiting === 1 ? 'waits' : 'wait'} for an answer.`,
    withdrawn: (day: string, reason: string) =>
      `Withdrawn on ${day}: “${reason}”. What was answered until then stays here.`,
    hazard: 'What can happen',
    ask: 'What it asks',
    covers: 'What it covers',
    source: 'Where it stands',
    law: 'An authority has ordered it.',
    maker: 'The maker asks for it.',
    first:
      'The notice itself, local law and the maker come first. If a thing is to be taken out of use, do that before anything is typed.',
    onBoard: 'Which things aboard',
    nothing: 'Nothing aboard any vessel is covered by it, as far as is on record.',
    answerIt: 'Answer',
    lookFirst: 'Look at it',
    correct: 'correct',
    withdraw: 'Withdraw the notice',
    withdrawHow: 'When its publisher took it back, or it was entered in error. Every obligation of it ends today.',
    withdrawReason: 'Why it is withdrawn',
    withdrawing: 'Withdrawing …',
    noReason: 'Say why.',
    serial: (serial: string) => `serial number ${serial}`,
    noSerial: 'no serial number on record',
  },
  item: { affected: 'Covered', may_be_affected: 'May be covered', answered: 'Answered' },
  deadline: {
    on: (day: string) => `by ${day}`,
    before_next_use: 'before the next use',
    days_after_issue: (days: number, day: string) => `within ${counted(days, 'day', 'days')}, by ${day}`,
  },
  answers: {
    done: 'Done',
    not_affected: 'Looked at: not covered',
    deferred: 'Put off',
    reopened: 'Answered by mistake: open again',
  } satisfies Record<NoticeAnswerCode, string>,
  answerForm: {
    title: (thing: string, vessel: string) => `What was done about ${thing} aboard ${vessel}`,
    correctTitle: (thing: string, vessel: string) => `Correct the answer for ${thing} aboard ${vessel}`,
    back: 'Back to the notice',
    asks: 'The notice asks',
    answer: 'What is the answer',
    choose: 'Choose …',
    chooseFault: 'Choose the answer.',
    notOffered: 'It is asked before the next use, so it cannot be put off.',
    on: 'When',
    serialRead: 'Serial number read on it',
    serialHelp: 'As it stands on the thing itself. It is written on the item.',
    newSerialHelp: 'Of the new one. Left empty, the old number is taken away.',
    replaced: 'Another one was put in its place: record that, too',
    reference: 'Work order or invoice',
    until: 'Put off until',
    note: 'Note',
    noteWhy: 'Why',
    record: 'Record the answer',
    correct: 'Strike out and record',
    nameFault: 'Say who.',
    notCovered: 'It is not among the things that this notice is about.',
  },
  newNotice: {
    title: 'Enter a maker’s notice',
    intro:
      'Copy it from the notice itself. What it covers is worked out as you type, and nothing is kept until you enter it.',
    about: 'What it is about',
    titleHelp: 'In one line: Hoses that may come off the tail.',
    publisher: 'Who published it',
    publisherHelp: 'The maker, or the authority.',
    reference: 'Its number or reference',
    issuedOn: 'Its date',
    document: 'Which document',
    documentHelp: 'Letter to owners, 3 March 2026. A document, an address, or both.',
    address: 'Address where it can be read',
    kind: 'Which kind of thing',
    makers: 'Makers it names',
    models: 'Models it names',
    onePerLine: 'One a line. Empty: all of them.',
    serials: 'Serial numbers it names',
    serialsHelp: 'One range a line: AB1200 – AB1399, or AB1500, or from AB2000, or up to 99. Empty: all of them.',
    serialFault: (line: string) => `“${line}” cannot be read as a range.`,
    madeFrom: 'Made from',
    madeTo: 'Made until',
    madeHelp: 'The first and the last day it names. Empty: open.',
    hazard: 'What can happen',
    action: 'What it asks for',
    actionWords: 'In its own words',
    actionWordsHelp: 'As an instruction: Have the hose replaced by a gas engineer.',
    deadline: 'By when',
    deadlineOn: 'By the day',
    deadlineDays: 'Days after the notice',
    weight: 'Who stands behind it',
    weights: { maker: 'the maker asks for it', law: 'an authority has ordered it' },
    enter: 'Enter the notice',
    entering: 'Entering …',
    faultsHeading: 'Not entered yet',
    needed: 'This is needed.',
    wholeNumber: 'A whole number of days is needed.',
    legends: { what: 'The notice', which: 'Which things it names', todo: 'What is to be done' },
  },
  actions: {
    stop_using: 'stop using it',
    inspect: 'check it',
    return: 'return it',
    replace: 'replace it',
  } satisfies Record<NoticeActionKind, string>,
  deadlines: {
    on: 'by a day',
    days_after_issue: 'so many days after the notice',
    before_next_use: 'before the next use',
  } satisfies Record<DeadlineKind, string>,
  matches: {
    heading: 'What it would find',
    notYet: 'Fill in the kind of thing and what it names, and what it would find aboard stands here.',
    looking: 'Looking …',
    sentence: (affected: number, may: number, vessels: number) =>
      affected + may === 0
        ? 'Nothing aboard any vessel, as far as is on record.'
        : `It covers ${counted(affected, 'thing', 'things')} and may cover ${numberOf(may)}, on ${counted(vessels, 'vessel', 'vessels')}.`,
    spared: (count: number) => `Of the same kind, and not covered: ${count}.`,
  },
};

function numberOf(count: number): string {
  return count === 0 ? 'no other' : counted(count, 'more', 'more');
}
