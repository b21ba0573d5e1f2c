/** Words of the due list. */
import type { components } from '@garboard/client/generated/api.d.ts';
import { age } from '../ui/age.ts';

export type DueSource = components['schemas']['DueRow']['source'] | components['schemas']['DueMatter']['source'];

/** What kind of thing is due. */
export const dueSourceWords: Readonly<Record<DueSource, string>> = {
  obligation: 'what rules ask',
  safety_notice: 'what notices ask',
  finding: 'what was found',
  deferral: 'what was put off, for review',
  referral: 'what is for a specialist',
  limitation: 'what nobody could examine',
};

export const strings = {
  title: 'What is out of date',
  asAt: 'As at …',
  asAtDay: (day: string) => `As at ${day}.`,
  anotherDay: 'Another day',
  anotherDayHelp: 'Everything as it stood, or will stand, on that day: 25 Nov 2026, or 2026-11-25.',
  show: 'Show',
  today: 'Today',
  print: 'Print',
  list: 'Thing by thing',
  caption: 'Everything with a date, soonest first',
  filters: 'Narrow the list',
  filter: {
    standing: 'standing',
    vessel: 'vessel',
    source: 'what',
    kind: 'kind',
    scheme: 'scheme',
    weight: 'weight',
    until: 'until',
    any: 'any',
  },
  until: {
    any: 'any day',
    '3-months': '3 months',
    '6-months': '6 months',
    '12-months': '12 months',
    '24-months': '24 months',
  },
  takeAway: 'Show everything',
  columns: { standing: 'Standing', by: 'By', thing: 'Thing', vessel: 'Vessel', due: 'Due', do: 'Do', source: 'Source' },
  inDays: (days: number) => (days === 0 ? 'today' : `in ${age(days)}`),
  noDate: 'no date',
  more: 'Show more',
  showing: 'Reading more …',
  waiting: 'Reading what is out of date …',
  failed: 'What is out of date could not be read',
  nothingMatches: 'Nothing answers to these words.',
  nothingMatchesHow: 'Take one away, or look further ahead.',
  nothingDue: (until: string) => `Nothing falls due within ${until}.`,
  nothingYet: 'Nothing aboard is on record yet.',
  nothingYetHow: 'Once a vessel has things aboard and somebody has recorded their dates, they stand here.',
  suspended: {
    heading: 'Suspended while she is laid up',
    explain: 'The clocks run on. What is due of these must be done before she returns to service.',
  },
  samples: {
    heading: 'One of each, whichever it is',
    explain:
      'Of the portable extinguishers aboard one of each type and year is discharged every five years. Licensed people do it; record it as a discharge.',
    oneOf: (kind: string, year: string, by: string) => `one ${kind} of ${year}, by ${by}.`,
  },
  suspendedNow: 'suspended',
  unknown: {
    heading: 'No date to go by',
    explain: 'A date is missing for these. Unknown is not in date: somebody has to look.',
    some: (count: number) => `${count} of them`,
  },
};
