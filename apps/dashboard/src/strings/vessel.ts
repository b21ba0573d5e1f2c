/** Words of the register and of a vessel's page. */
import { counted, sentenceCase } from '../ui/number-words.ts';

export const strings = {
  register: {
    title: 'Which vessels are kept here',
    answer: (count: number) =>
      `${sentenceCase(counted(count, 'vessel', 'vessels'))}. What is out of date by law is counted apart from what is advice.`,
    caption: 'The register, with how each vessel’s things stand',
    columns: {
      vessel: 'Vessel',
      law: 'Out of date by law or certificate',
      insurer: 'Out of date by an insurer’s terms',
      advice: 'Out of date by advice',
      due: 'Due',
      unknown: 'No date',
      inDate: 'In date',
      next: 'Next',
    },
    waiting: 'Reading the register …',
    failed: 'The register could not be read',
    empty: 'No vessel is on the register yet.',
    emptyHow: 'Enter the first one: her name is enough to begin with.',
  },
  statement: (name: string, overdue: number, unknown: number) => {
    if (overdue > 0) return { before: '', name, after: ` has ${counted(overdue, 'thing', 'things')} out of date` };
    if (unknown > 0)
      return {
        before: '',
        name,
        after: `: nothing known to be out of date, ${counted(unknown, 'date', 'dates')} missing`,
      };
    return { before: 'Nothing on record is out of date aboard ', name, after: '' };
  },
  asAt: (day: string) => `As at ${day}.`,
  schemes: 'Kept under',
  identifiers: {
    heading: 'How she is identified',
    inDoubt: 'In doubt',
  },
  before: 'Before anybody uses her',
  beforeNothing: 'Nothing on record is out of date. “Nothing recorded against her” is not “safe”: the skipper decides.',
  where: 'Where',
  places: 'From keel to masthead',
  somewhere: 'somewhere aboard',
  noRule: 'No rule here gives it a date.',
  itsFacts: 'Its facts',
  withdrawn: 'Taken out of use',
  picked: (count: number, from: string, to: string) =>
    `${sentenceCase(counted(count, 'thing', 'things'))} ${count === 1 ? 'falls' : 'fall'} due ${from === to ? `on ${from}` : `between ${from} and ${to}`}; ${count === 1 ? 'it is' : 'they are'} tinted below.`,
  addThing: 'Add a thing aboard',
  nothingAboard: 'Nothing aboard her is on record yet.',
  nothingAboardHow: 'Add what has a date: the liferaft, hoses, extinguishers, flares, rigging.',
  waiting: 'Reading her record …',
  failed: 'Her record could not be read',
};
