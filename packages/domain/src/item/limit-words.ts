/** What a limit says, for the explanation: "12 months after the last service". */
import { periodInWords } from '../calendar/words.ts';
import type { Duty, Interval, Limit, Start } from '../rule/rule.ts';
import { ATTRIBUTES } from './attribute.ts';
import { eventInWords, resetInWords } from './words.ts';

/** With `period` (ISO 8601) the one that was counted; without, the interval as the rule has it. */
export function limitInWords(limit: Limit, duty: Duty, period?: string): string {
  switch (limit.kind) {
    case 'after': {
      const interval = period === undefined ? intervalInWords(limit.plus) : periodInWords(period);
      return `${interval} after ${startInWords(limit.from, duty)}`;
    }
    case 'printed':
      return 'the date printed on it';
    case 'given': {
      const { words } = ATTRIBUTES[limit.attribute];
      return limit.plus ? `${periodInWords(limit.plus)} after ${words}` : words;
    }
    case 'next_event':
      return `the next ${eventInWords(limit.event)}`;
  }
}

function intervalInWords(interval: Interval): string {
  switch (interval.kind) {
    case 'fixed':
      return periodInWords(interval.period);
    case 'own_figure':
      return ATTRIBUTES[interval.attribute].words;
    case 'by_condition':
      return `${interval.options.map((option) => periodInWords(option.period)).join(' or ')}, by its kind and use,`;
    case 'by_age':
      return `${periodInWords(interval.period)}, shorter with age,`;
  }
}

function startInWords(from: Start, duty: Duty): string {
  switch (from) {
    case 'manufactured':
      return 'manufacture';
    case 'installed':
      return 'fitting';
    case 'last_done':
      return `the last ${resetInWords(duty.resets[0])}`;
  }
}
