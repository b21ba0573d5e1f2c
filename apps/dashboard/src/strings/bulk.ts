/** Words of choosing rows and recording a fact for all of them at once. */
import { counted, sentenceCase } from '../ui/number-words.ts';

const MOST_NAMED = 6;
const things = (count: number) => counted(count, 'thing', 'things');

export const strings = {
  choose: (thing: string, vessel: string, act: string) => `Choose: ${thing}, ${vessel}: ${act}`,
  chooseAll: 'Choose every row shown',
  tick: 'Done',
  chosen: (count: number) => `${sentenceCase(things(count))} chosen.`,
  record: (count: number) => `Record a fact for ${count === 1 ? 'it' : `all ${count}`}`,
  clear: 'Choose none',
  title: (count: number) => `Record a fact for ${things(count)} at once`,
  things: (names: readonly string[]) =>
    names.length > MOST_NAMED
      ? `${names.slice(0, MOST_NAMED).join('; ')}; and ${names.length - MOST_NAMED} more.`
      : `${names.join('; ')}.`,
  tooMany: (most: number) => `At most ${most} things at once. Choose fewer.`,
  submit: (count: number) => `Record for ${things(count)}`,
  leave: 'Not now',
  outcome: (recorded: number, refused: number) =>
    `Recorded for ${things(recorded)}${refused > 0 ? `, refused for ${counted(refused, 'other', 'others')}` : ''}.`,
  undone: (taken: number, refused: number) =>
    `Taken back for ${things(taken)}${refused > 0 ? `, refused for ${counted(refused, 'other', 'others')}` : ''}.`,
  undo: (count: number) => (count === 1 ? 'Undo' : `Undo all ${count}`),
  undoNote: 'Taken back right after it was recorded for many things at once.',
  recorded: 'Recorded:',
  refused: 'Refused:',
  takenBack: 'Taken back:',
  nextDue: 'now due',
  putAway: 'Put this away',
};
