/** Words of the organisation's season. */
export const strings = {
  title: 'When is the season',
  intro:
    'The months in which the boats are used most. It is drawn behind the dates on the fleet’s horizon, and moves none.',
  from: 'First day',
  to: 'Last day',
  day: 'Day',
  month: 'Month',
  set: 'Set the season',
  none: 'Say nothing of a season',
  done: (days: readonly string[] | null) =>
    days ? `Set: ${days.join(' to ')}, every year.` : 'Nothing is said of a season.',
  notSet: 'Not set yet',
  notSetWhy: 'Put this right and set it again.',
  waiting: 'Reading the season …',
  failed: 'The season could not be read',
};
