/** Words that many forms have. */
export const form = {
  show: 'show',
  hide: 'hide',
  notYet: 'Not yet',
  notYetWhy: 'Put this right and try again.',
  needed: 'is needed',
  busy: 'One moment …',
  noVessel: 'names no vessel yet',
  notDone: 'Not done',
};
