/** Words of the fleet's horizon. */
import { countAll, countBinding, type StandingCounts } from '../due-list/counts.ts';
import type { MarkKind } from '../fleet/horizon-marks.ts';
import { age } from '../ui/age.ts';

export const strings = {
  heading: 'Who needs somebody first',
  asTable: 'As a table',
  asPicture: 'As a picture',
  whyThisOrder:
    'In this order: most to be put right before use, then most out of date by law or certificate, then by anything, then the longest; then whoever runs out next.',
  outOfDate: 'out of date',
  findings: 'findings',
  findingsOf: (open: number, urgent: number) =>
    open === 0
      ? 'no open finding on record'
      : `${open} ${open === 1 ? 'finding' : 'findings'} open, ${urgent} to be put right before use`,
  ofThemByLaw: 'by law',
  dueSoonInShort: 'due',
  byLaw: (count: number) => `${count} by law or certificate`,
  dueOf: (count: number) => `${count} due within 30 days`,
  zoom: 'How far',
  zoomTo: (months: number) => (months === 24 ? '2 years' : months === 12 ? '1 year' : `${months} months`),
  season: (year: string) => `season ${year}`,
  noSeason: 'Say when the season is',
  noDate: 'no date',
  crowding: 'How crowded each week is',
  mostCrowded: (count: number, week: string) => `Most in one week: ${count}, from ${week}.`,
  chart: 'What falls due for each vessel, by date. The arrow keys move from mark to mark.',
  marks: {
    service: 'service, test or inspection',
    replace: 'replace or withdraw',
    document: 'document',
  } satisfies Record<MarkKind, string>,
  dueSoon: 'due within 30 days',
  laidUp: 'laid up, fading where no end is on record: dates do not wait unless the rule says so',
  ashore: 'ashore',
  haulOut: 'haul-out',
  inSeason: 'season',
  severalHere: 'several together: what, and how many',
  more: (count: number) => `and ${count} more`,
  standingOf: (counts: StandingCounts, days: number | null) => {
    const overdue = countAll(counts.overdue);
    if (overdue === 0) return 'nothing out of date on record';
    const worst = days === null ? '' : `, the oldest by ${age(days)}`;
    return `${overdue} out of date, ${countBinding(counts.overdue)} by law or certificate${worst}`;
  },
  unknownOf: (count: number) => `${count} with no date to go by`,
  tableCaption: 'How many things fall due for each vessel, and when',
  columns: [
    'Vessel',
    'Findings',
    'before use',
    'Out of date',
    'by law',
    'Oldest by',
    'No date',
    'Next',
    '3 months',
    '3 to 6',
    '6 to 12',
    '12 to 24 months',
  ],
  waiting: 'Reading the fleet’s dates …',
  failed: 'The fleet could not be read',
  empty: 'No vessel is on the register yet.',
  emptyHow: 'Enter the first one: her name is enough to begin with.',
};
