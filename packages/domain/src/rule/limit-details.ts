/** What a limit's few words leave out: the options of an interval, a window, how long a certificate runs. */
import { periodInWords } from '../calendar/words.ts';
import { ATTRIBUTES } from '../item/attribute.ts';
import { conditionInWords } from '../item/weigh-condition.ts';
import type { AnniversaryWindow, CertificateTerms } from './certificate-terms.ts';
import type { Counting, Interval, Limit } from './rule.ts';

export function detailsOfLimit(limit: Limit): readonly string[] {
  switch (limit.kind) {
    case 'after':
      return [
        ...detailsOfInterval(limit.plus),
        ...(limit.counting ? [COUNTING[limit.counting]].filter(Boolean) : []),
        ...(limit.reading ? [`Our reading: ${limit.reading}.`] : []),
        ...(limit.fromMemory ? ['This figure is from memory.'] : []),
      ];
    case 'printed':
      return limit.renewedBy ? ['Printed on a part that the act renews: an earlier print no longer counts.'] : [];
    case 'anniversary':
      return [
        `Anniversaries of its ${limit.of === 'expiry' ? 'expiry' : 'first day'}.`,
        ...detailsOfWindow(limit.window),
        ...(limit.endorsed ? [`First of all: ${ATTRIBUTES[limit.endorsed].words}.`] : []),
        ...detailsOfTerms(limit.terms),
      ];
    case 'one_of_anniversaries':
      return [...detailsOfWindow(limit.window), ...detailsOfTerms(limit.terms)];
    case 'given_anniversary':
      return detailsOfWindow(limit.window);
    case 'certificate_expiry':
    case 'once_in_certificate':
      return detailsOfTerms(limit.terms);
    case 'running_hours':
      if ('hours' in limit) return [];
      return limit.otherwise === undefined
        ? ['Without that figure no hours are counted.']
        : [`Without that figure: ${limit.otherwise} hours.`];
    case 'given':
    case 'next_event':
    case 'before_event':
    case 'triggered':
    case 'deadline_set':
      return [];
  }
}

const COUNTING: Record<Counting, string> = {
  days: '',
  whole_months: 'Counted in whole months: to the end of the month it leads to.',
  whole_years: 'Counted in whole years: to 31 December of the year it leads to.',
  beginning_with: 'The first day is counted, so the period ends the day before the corresponding one.',
};

export function detailsOfInterval(interval: Interval): readonly string[] {
  switch (interval.kind) {
    case 'fixed':
      return [];
    case 'own_figure':
      return [
        interval.otherwise === undefined
          ? 'Without that figure there is no date.'
          : `Without that figure: ${periodInWords(interval.otherwise)}.`,
      ];
    case 'by_condition':
      return interval.options.map(({ period, all, fromMemory }) => {
        const when = all.length === 0 ? 'otherwise' : `where ${all.map((one) => conditionInWords(one)).join('; ')}`;
        return `${periodInWords(period)} ${when}${fromMemory ? ' (from memory)' : ''}.`;
      });
    case 'by_age':
      return interval.bands.map(
        ({ fromAge, period }) => `From ${periodInWords(fromAge)} of age: ${periodInWords(period)}.`,
      );
  }
}

function detailsOfWindow({ before, after }: AnniversaryWindow): readonly string[] {
  const opens = before === undefined ? 'no opening is stated' : `from ${periodInWords(before)} before it`;
  return [`In its window the work counts for the anniversary: ${opens}, to ${periodInWords(after)} after it.`];
}

function detailsOfTerms({ name, runs, keepsExpiryWithin, whenLate }: CertificateTerms): readonly string[] {
  if (!runs) return [`How long the ${name} runs is not known here: only the expiry printed on it counts.`];
  const late = whenLate === 'old_expiry' ? 'the old expiry too' : 'the survey';
  return [
    `The ${name} runs for ${periodInWords(runs.period)}. Renewed no earlier than ${periodInWords(keepsExpiryWithin)} before the old expiry, it goes on from there; earlier, from the survey; later, from ${late}.`,
  ];
}
