/** What the history of one vessel's things is made from: her age, who looks after her, and how well. */
import type { Day } from '@garboard/domain/calendar/day.ts';
import { addDays } from '@garboard/domain/calendar/day.ts';
import type { DoneBy } from '@garboard/domain/item/fact.ts';
import { type Random, randomOf } from './random.ts';

/** Who does the work, by trade. */
export type People = Readonly<
  Record<
    'keeper' | 'yard' | 'rigger' | 'gasEngineer' | 'engineer' | 'raftStation' | 'fireTechnician' | 'surveyor',
    DoneBy
  >
>;

/** How a thing stands today. */
export type Fortune = 'in_date' | 'soon' | 'late' | 'unknown';

/** How many of a hundred things are late, due within the month, or without a date. */
export type Luck = { readonly late: number; readonly soon: number; readonly unknown: number };

export type Logbook = {
  /** Names the vessel; every chance is drawn from it and from the thing's own label. */
  readonly seed: string;
  readonly today: Day;
  readonly commissionedOn: Day;
  readonly enteredOn: Day;
  /** The last yearly round of care. */
  readonly careOn: Day;
  /** How many of the same thing were typed in, the last first: older sheets are seldom kept. */
  readonly sheets: number;
  readonly people: People;
  readonly luck: Luck;
};

/** The thing's own chance: another thing more or less aboard changes nothing for it. */
export function chanceOf(log: Logbook, label: string): Random {
  return randomOf(`${log.seed}/${label}`);
}

export function fortuneOf(random: Random, { late, soon, unknown }: Luck): Fortune {
  const drawn = random.between(1, 100);
  if (drawn <= late) return 'late';
  if (drawn <= late + soon) return 'soon';
  return drawn <= late + soon + unknown ? 'unknown' : 'in_date';
}

/** The day on which it came into the register: with the vessel, or after; yesterday at the latest, whatever the hour now. */
export function learnedFrom({ enteredOn, today }: Logbook, day: Day): Day {
  return Math.min(Math.max(day, enteredOn), addDays(today, -1)) as Day;
}
