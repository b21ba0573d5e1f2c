/** Words of the screens of findings; those of their codes are beside it. */
import { counted, numberInWords, sentenceCase } from '../ui/number-words.ts';

const list = {
  title: 'What was found and is not put right',
  titleEnded: 'What was found and has ended',
  answer: (all: number, urgent: number) => {
    if (all === 0) return 'Nothing that was found is open. That is not the same as safe: the skipper decides.';
    const open = `${sentenceCase(counted(all, 'finding', 'findings'))} open`;
    return urgent === 0
      ? `${open}; none is to be dealt with before use.`
      : `${open}, ${numberInWords(urgent)} to be dealt with before use.`;
  },
  more: 'Show more',
  print: 'Print',
  caption: 'Findings, the most urgent first',
  waiting: 'Reading the findings …',
  failed: 'The findings could not be read',
  nothing: 'Nothing answers to these words.',
  nothingHow: 'Take one away.',
  nothingYet: 'Nothing was found yet.',
  nothingYetHow: 'Whatever is not right is entered from the page of its vessel.',
  filters: 'Narrow the list',
  filter: {
    urgency: 'urgency',
    hazard: 'hazard',
    trade: 'for',
    state: 'standing',
    vessel: 'vessel',
    show: 'show',
    group: 'grouped by',
    any: 'any',
  },
  show: { open: 'open ones', ended: 'ended ones' },
  groups: { urgency: 'urgency', trade: 'trade', vessel: 'vessel', hazard: 'hazard' },
  noTrade: 'Nobody named yet',
  takeAway: 'Show everything',
  columns: { standing: 'Standing', what: 'What', where: 'Where', vessel: 'Vessel', due: 'Due', reads: 'How it stands' },
  ended: 'Ended',
};

const one = {
  waiting: 'Reading the finding …',
  failed: 'The finding could not be read',
  number: (number: number) => `Finding ${number}`,
  next: 'What comes next',
  nothingToDo: 'Nobody here may do anything about it with your role.',
  story: 'Its story',
  facts: 'What is known of it',
  names: {
    where: 'Where',
    hazard: 'Threatens',
    urgency: 'To be dealt with',
    due: 'By',
    seen: 'Seen',
    trade: 'For',
    responsible: 'Answers for it',
    estimate: 'Estimate',
    limit: 'Must be right by',
    thing: 'Thing aboard',
    work: 'Work',
    rule: 'Rule',
  },
  seen: (first: string, last: string, how: string) =>
    first === last ? `${first}` : `first on ${first}, last on ${last}: ${how}`,
  new: 'new',
  estimate: (money: string, author: string) => `${money}, says ${author}`,
  by: (who: string, when: string) => `${who}, ${when}`,
  program: 'a program',
  upkeep: 'from the books',
  former: 'somebody who has left',
  leave: 'Leave it',
  changed: 'Somebody else wrote meanwhile',
  changedHow: 'What you typed is still here. Read theirs; then send yours as well, or leave it.',
  alsoSend: 'Send mine as well',
  done: 'Written.',
  noEvidence: 'nothing shown',
};

const acts = {
  look: 'Say what was seen',
  propose: 'Propose work',
  plan: 'Plan it',
  begin: 'Begin',
  report_done: 'Report it done',
  verify: 'Verify',
  defer: 'Put off',
  accept: 'Accept as it is',
  change: 'Change what is written',
  enter_in_error: 'Entered in error',
  reopen: 'Reopen',
};

const boxes = {
  seen: 'What was seen',
  on: 'On which day',
  words: 'In words',
  wordsHelp: 'With “not examined”: why not.',
  urgency: 'To be dealt with',
  urgencySame: 'as before',
  urgentBy: 'By which day',
  urgentByHelp: 'Only with “within weeks”, where the surveyor names a day.',
  evidence: 'What shows it',
  evidenceGone: 'What shows it: needed where it is gone, which ends the finding.',
  work: 'What is to be done',
  workDone: 'What was done',
  trade: 'Who it is for',
  tradeNone: 'not named',
  estimate: 'What it may cost',
  estimateHelp: 'Such as 180 EUR. Leave it empty where nobody knows.',
  estimateFault: 'write an amount and a currency, such as 180.00 EUR',
  author: 'Who estimates so',
  forDay: 'For which day',
  responsible: 'Who answers for it',
  doneOn: 'Done on',
  doneBy: 'Done by',
  doneByMe: 'me',
  doneByAnother: 'somebody else',
  name: 'Their name',
  capacity: 'As what',
  certificate: 'Certificate or licence',
  thing: (label: string) => `What was done to ${label}`,
  thingNone: 'nothing that moves its dates',
  factsOfWork: {
    replaced: 'it was replaced',
    serviced: 'it was serviced',
    inspected: 'it was inspected',
    overhauled: 'it was overhauled',
    withdrawn: 'it was taken out of use',
  },
  thingHelp: 'Recorded as a fact of the thing in the same act, so that its dates move.',
  right: 'Is it right?',
  rightYes: 'yes, it is put right',
  rightNo: 'no, it goes back',
  until: 'Until which day',
  reviewOn: 'Looked at again on',
  reason: 'Why',
  what: 'What is not right',
  where: 'Where aboard',
  hazard: 'What it threatens',
  choose: 'choose',
  foundOn: 'Seen on',
  thingAboard: 'Thing aboard',
  thingAboardNone: 'none in particular',
  send: 'Write it down',
};

const fresh = {
  link: 'Enter a finding',
  title: (vessel: string) => `What is not right aboard ${vessel}?`,
  intro: 'It stays open until somebody other than whoever mends it has looked.',
  back: 'Back to her page',
  alike: 'Perhaps it is on record already',
  alikeHow: 'Seen again is better than entered twice: open the one it is and say what was seen.',
  because: (reasons: string) => `because of ${reasons}`,
  submit: 'Enter it',
};

const vessel = {
  open: 'Findings',
  heading: (count: number) => counted(count, 'finding', 'findings'),
};

export const strings = { list, one, acts, boxes, fresh, vessel };
