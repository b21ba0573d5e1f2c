/** Words of the pages on which an organisation's own rule is laid down, changed and ended. */
import type { components } from '@garboard/client/generated/api.d.ts';
import { counted } from '../ui/number-words.ts';
import type { FactCode, WeightCode } from './codes.ts';

type Text = components['schemas']['OwnRuleText'];
export type OwnAct = Extract<FactCode, Text['resets'][number]['act']>;

export const strings = {
  add: 'Add a rule of our own',
  addTitle: 'What our own rule asks',
  addIntro:
    'It gives dates beside those of the published rules, with its reasoning, and never counts as law. Flag state, local law and the maker’s instructions come first.',
  notYours: 'Rules of our own are kept by the owner and the managers.',
  back: 'Every rule',
  toRule: 'Back to the rule',
  box: {
    inWords: 'The rule, in full sentences',
    kinds: 'Which things it is about',
    actionKind: 'What is done',
    actionWords: 'What somebody must do',
    vessels: 'Aboard which vessels',
    scheme: 'Under which scheme',
    vesselIds: 'Which vessels',
    lastDone: 'After it was last done',
    installed: 'After it was fitted',
    manufactured: 'After it was made',
    printed: 'By the date printed on it',
    hours: 'After running hours',
    within: 'No longer before a date in the diary',
    event: 'Which date in the diary',
    first: 'The first time',
    firstFrom: 'Counted from',
    before: 'May be done before the day',
    after: 'May be done after the day',
    act: 'Which act starts the clock anew',
    test: 'Which test or examination',
    by: 'Done by whom',
    weight: 'What stands behind it',
    takesEffectOn: 'Counts from',
    decidedBy: 'Who decided it',
    reason: 'Why',
    document: 'Where it stands in writing',
  },
  inWordsHelp: '“Every extinguisher is looked at once a week.”',
  actionHelp: 'As an instruction: “Look at pin, gauge and bracket”.',
  addKind: 'Add a kind of thing …',
  takeOff: (name: string) => `Take ${name} off`,
  limits: 'When it is due',
  limitsHelp:
    'Fill in what applies; of several the earliest binds. Lengths of time as 7 days, 3 months, 2 years; running hours only for a thing with an hour meter.',
  firstHelp: 'When it is due where it was never done yet. Left empty, the date is unknown until it is.',
  windowHelp: 'The span in which the work counts as done on the day. Left empty: none.',
  anew: 'What starts the clock anew',
  alsoAnew: (also: string) => `Also started anew by: ${also}.`,
  anybody: 'whoever does it',
  noTest: 'not a particular one',
  which: { all: 'all of them', under_scheme: 'those under a scheme', chosen: 'chosen ones' },
  decision: 'Whose decision it is',
  takesEffectHelp: '25 Nov 2026. It may lie ahead; dates change on that day.',
  documentHelp: '“Standing orders, no. 4”, “Letter of the insurer, 12 Mar 2026”.',
  choose: 'Choose …',
  faults: {
    empty: 'This is needed.',
    kinds: 'Choose at least one kind of thing.',
    vessels: 'Choose at least one vessel.',
    limits: 'Say when it is due: fill in at least one of these.',
    period: 'Not a length of time. Write 7 days, 2 weeks, 3 months or 2 years.',
    hours: 'A whole number of hours is needed.',
  },
  faultsHeading: 'Not laid down yet',
  faultsWhy: 'Nothing typed is lost. Put these right and send it again.',
  notSent: 'It may not have been laid down. Send it again: it will not be laid down twice.',
  layDown: 'Lay it down',
  sending: 'Laying down …',
  change: 'Change it from a day',
  changeTitle: 'What our rule asks from a day on',
  changeIntro: 'The whole rule as it is to be from that day on. What applied before stays known.',
  changeIt: 'Lay down the new version',
  end: 'End it',
  endTitle: 'From which day is there no such rule',
  endIntro: 'It counts no more from that day on. What applied before stays known, and the rule can be taken up again.',
  endIt: 'End the rule',
  countsNoMore: 'Counts no more from',
  versions: 'Which versions it has',
  version: (number: number) => `Version ${number}`,
  from: 'from',
  ends: 'ends it',
  inForce: 'counts now',
  planned: 'still to come',
  past: 'no longer counts',
  said: (who: string, why: string, where: string) => `${who}: “${why}” (${where}).`,
  over: 'It has ended: nothing is asked by it now.',
  progress: {
    name: 'How far the change is',
    running: (done: number, all: number) =>
      `Being worked through: ${done} of ${counted(all, 'thing', 'things')}. Until then some dates are still the old ones.`,
    done: (all: number, changed: number) =>
      `Worked through: ${counted(all, 'thing', 'things')} looked at, ${counted(changed, 'date', 'dates')} changed.`,
    failed: 'How far the change is could not be read',
  },
};

export const ownWeightWords: Record<Extract<WeightCode, Text['weight']>, string> = {
  own: 'our own decision',
  insurer: 'an insurer’s terms',
  maker: 'the maker’s instructions',
  common_practice: 'common practice',
};

export const actKindWords: Record<Text['action']['kind'], string> = {
  inspect: 'inspect',
  service: 'service',
  test: 'test',
  replace: 'replace',
  overhaul: 'overhaul',
  withdraw: 'take out of use',
};

export const ownActWords: Record<OwnAct, string> = {
  inspected: 'an inspection',
  serviced: 'a service',
  tested: 'a test',
  replaced: 'a replacement',
  overhauled: 'an overhaul',
};
