/** What a limit says, for the explanation: "12 months after the last service". */
import { periodInWords } from '../calendar/words.ts';
import type { Duty, Interval, Limit, Start } from '../rule/rule.ts';
import { ATTRIBUTES } from './attribute.ts';
import { doneInWords, eventInWords, resetInWords, withArticle } from './words.ts';

/** With `period` (ISO 8601) the one that was counted; without, the interval as the rule has it. */
export function limitInWords(limit: Limit, duty: Duty, period?: string): string {
  switch (limit.kind) {
    case 'after': {
      const interval = period === undefined ? intervalInWords(limit.plus) : periodInWords(period);
      const counted = limit.counting === 'beginning_with' ? 'beginning with' : 'after';
      return `${interval} ${counted} ${startInWords(limit.from, duty)}`;
    }
    case 'printed':
      return 'the date printed on it';
    case 'given': {
      const { words } = ATTRIBUTES[limit.attribute];
      return limit.plus ? `${periodInWords(limit.plus)} after ${words}` : words;
    }
    case 'next_event':
      return `the next ${eventInWords(limit.event)}`;
    case 'certificate_expiry':
      return `the last day of the ${limit.terms.name}`;
    case 'anniversary':
      return `the next anniversary of the ${limit.terms.name}`;
    case 'one_of_anniversaries':
      return `the last of the anniversaries ${limit.numbers.join(' and ')} of the ${limit.terms.name}`;
    case 'once_in_certificate':
      return `${periodInWords(limit.within)} beginning with the survey that began the ${limit.terms.name}`;
    case 'given_anniversary':
      return ATTRIBUTES[limit.attribute].words;
    case 'running_hours':
      return 'hours' in limit
        ? `${limit.hours} running hours after the last ${resetInWords(duty.resets[0])}`
        : ATTRIBUTES[limit.attribute].words;
    case 'before_event':
      return `a ${eventInWords(limit.event)} within ${periodInWords(limit.within)} of the last ${resetInWords(duty.resets[0])}`;
    case 'triggered':
      return triggerInWords(limit);
    case 'deadline_set':
      return 'the day that the surveyor set';
  }
}

/** "at once after a grounding", "at once after it was used". */
export function triggerInWords({ events, facts }: Pick<Extract<Limit, { kind: 'triggered' }>, 'events' | 'facts'>) {
  const happened = events.map((event) => withArticle(eventInWords(event)));
  const done = facts.map((fact) => `it was ${doneInWords(fact)}`);
  return `at once after ${[...happened, ...done].join(' or ')}`;
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
    case 'first_failed':
      return `the ${resetInWords(duty.resets[0])} that did not pass`;
    case 'last_done':
      return `the last ${resetInWords(duty.resets[0])}`;
  }
}
