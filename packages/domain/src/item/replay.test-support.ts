/**
 * A second way from an explanation to its date: the words of what binds, the facts that it names and the
 * calendar; of the rule only how it counts and how long its certificate runs.
 */
import { addDays, type Day, daysBetween, endOfMonth, endOfYear, parseDay } from '../calendar/day.ts';
import { addPeriod, backwards, endOfPeriodBeginningWith, type Period } from '../calendar/period.ts';
import { periodInWords, periodOf } from '../calendar/words.ts';
import type { CertificateTerms } from '../rule/certificate-terms.ts';
import type { Duty, Limit } from '../rule/rule.ts';
import { findRule } from '../rule/rules.ts';
import { ATTRIBUTES, dateOf } from './attribute.ts';
import { dateOnRecord } from './date-on-record.ts';
import type { Fact } from './fact.ts';
import type { Obligation } from './obligation.ts';
import { unitAboard } from './unit-aboard.ts';
import { eventInWords } from './words.ts';
import type { ItemHistory, VesselHistory } from './work-out-obligations.ts';

/** `named`: an anniversary, whose day the words themselves name. `not_replayed`: the facts named do not suffice. */
export type Replayed = { readonly form: string; readonly on: Day | null };

type Case = {
  readonly words: string;
  readonly sentence: string;
  readonly assumed: readonly string[];
  readonly facts: readonly Fact[];
  readonly item: ItemHistory;
  readonly vessel: VesselHistory;
  readonly duty: Duty;
};

export function replayed(obligation: Obligation, item: ItemHistory, vessel: VesselHistory): Replayed {
  const { binds, sentence, assumed } = obligation.explanation;
  const duty = findRule(obligation.ruleId)?.duties.find(({ id }) => id === obligation.duty);
  if (!binds || !duty) throw new Error('nothing to replay');
  const facts = binds.factIds.map((id) => item.facts.find((fact) => fact.id === id) as Fact);
  const [words = '', begins] = binds.limit.replaceAll(' (from memory)', '').split(', but not before ');
  const base = { sentence, assumed, item, vessel, duty };
  const counted = replayOne({ ...base, words, facts });
  if (begins === undefined || counted.on === null) return counted;
  const start = replayOne({ ...base, words: begins, facts: [startOf(begins, item)] });
  return { form: counted.form, on: Math.max(counted.on, start.on ?? Number.NaN) as Day };
}

function startOf(words: string, { facts }: ItemHistory): Fact {
  const unit = unitAboard(facts);
  const kinds = words.endsWith('manufacture') ? (['manufactured'] as const) : (['installed', 'replaced'] as const);
  return (unit.kind === 'aboard' && dateOnRecord(unit.facts, kinds)?.fact) as Fact;
}

function replayOne(one: Case): Replayed {
  const { words, facts, vessel } = one;
  const named = dayNamed(words);
  if (named !== null) return { form: 'named', on: named };
  if (words.endsWith(', estimated')) {
    const on = replayHours(one);
    return { form: on === null ? 'not_replayed' : 'hours', on };
  }
  if (words === 'the date printed on it') return { form: 'printed', on: facts[0]?.on.last ?? null };
  if (words === 'the day that the surveyor set') return { form: 'deadline', on: facts[0]?.until ?? null };
  if (words.startsWith('the last day of the ')) return { form: 'certificate', on: certificateOf(one).expires };
  if (/ beginning with the survey that began the /.test(words)) return { form: 'once', on: replayOnce(one) };
  if (words.startsWith('at once after '))
    return { form: 'trigger', on: facts[0]?.on.first ?? eventOn(one, (e) => !e.planned) };
  if (vessel.events.some(({ event }) => words === `the next ${eventInWords(event)}`))
    return { form: 'event', on: eventOn(one, (event) => event.planned) };
  if (/ within .* of the last /.test(words)) return { form: 'before_event', on: replayBefore(one) };
  const period = /^(\d+ \w+(?: and \d+ \w+)*) (?:after|beginning with) /.exec(words)?.[1];
  if (period !== undefined && facts[0]) return { form: 'period', on: replayPeriod(periodSaid(period), one) };
  return { form: 'given', on: replayGiven(one, period) };
}

function dayNamed(words: string): Day | null {
  const [, day = '', month = '', year = ''] = /(\d{1,2}) ([A-Z][a-z]+) (\d{4})$/.exec(words) ?? [];
  return parseDay(`${year}-${`${MONTHS.indexOf(month) + 1}`.padStart(2, '0')}-${day.padStart(2, '0')}`);
}

const MONTHS = 'January February March April May June July August September October November December'.split(' ');

/** "2 years and 6 months". */
function periodSaid(words: string): Period {
  const parts = [...words.matchAll(/(\d+) (year|month|week|day)/g)];
  const total = (unit: string) =>
    parts.filter((part) => part[2] === unit).reduce((sum, part) => sum + Number(part[1]), 0);
  return { months: total('year') * 12 + total('month'), days: total('week') * 7 + total('day') };
}

function limitsOf({ limits, cappedBy = [], noLaterThan = [], fallback = [], begins }: Duty): readonly Limit[] {
  return [
    ...limits,
    ...cappedBy,
    ...noLaterThan,
    ...fallback,
    ...(begins ? [{ kind: 'after' as const, ...begins }] : []),
  ];
}

/** From the first day that the fact can mean; rounded as the rule counts, and never before an age band begins. */
function replayPeriod(period: Period, { words, assumed, facts: [fact], item, duty }: Case): Day | null {
  if (!fact) return null;
  const from = words.endsWith('manufacture') ? 'manufactured' : words.endsWith('fitting') ? 'installed' : 'last';
  const limit = limitsOf(duty).find(
    (each) =>
      each.kind === 'after' && (each.from === from || (from === 'last' && /last_done|first_failed/.test(each.from))),
  );
  if (limit?.kind !== 'after') return null;
  const start = dayKept(assumed) ?? fact.on.first;
  const reached = addPeriod(start, period);
  const bands = limit.plus.kind === 'by_age' ? limit.plus.bands : [];
  const made = bands.length > 0 ? startOf('manufacture', item) : undefined;
  const band = made && bands.find((each) => periodInWords(each.period) === words.split(' after ')[0]);
  const ends = {
    days: reached,
    whole_months: endOfMonth(reached),
    whole_years: endOfYear(reached),
    beginning_with: endOfPeriodBeginningWith(start, period),
  }[limit.counting ?? 'days'];
  return band ? (Math.max(ends, addPeriod(made.on.first, periodOf(band.fromAge))) as Day) : ends;
}

/** Where it was done in a window, the day as which it counts. */
function dayKept(assumed: readonly string[]): Day | null {
  const said = assumed.map((text) => /counts as done on (.*)\.$/.exec(text)?.[1]).find(Boolean);
  return said === undefined ? null : dayNamed(said);
}

function replayGiven({ words, item }: Case, period: string | undefined): Day | null {
  const attribute = Object.values(ATTRIBUTES).find(
    (each) => words === each.words || words.endsWith(` after ${each.words}`),
  );
  const date = attribute && dateOf(item.attributes, attribute.id);
  if (!date) return null;
  return period === undefined ? date.last : addPeriod(date.first, periodSaid(period));
}

/** Which of the vessel's events the sentence speaks of: the one on the day that it names. */
function eventOn({ sentence, vessel }: Case, isMeant: (event: VesselHistory['events'][number]) => boolean): Day | null {
  const days = [...sentence.matchAll(/\d{1,2} [A-Z][a-z]+ \d{4}/g)].map(([text]) => dayNamed(text));
  return vessel.events.find((event) => isMeant(event) && event.on === days[0])?.on ?? null;
}

function replayBefore({ words, facts: [fact], sentence }: Case): Day | null {
  const within = / within (.*) of the last /.exec(words)?.[1] ?? '';
  if (fact) return addPeriod(fact.on.first, periodSaid(within));
  const planned = dayNamed(/planned for (\d{1,2} [A-Z][a-z]+ \d{4})/.exec(sentence)?.[1] ?? '');
  return planned === null ? null : addDays(planned, -1);
}

/** From the act on, at the rate between the two readings named; `null` where the act lies before the later of them. */
function replayHours({ words, facts: [done, from, to] }: Case): Day | null {
  const hours = Number(/^\d+/.exec(words)?.[0]);
  if (!done || !from?.reading || !to?.reading || done.on.first < to.on.first) return null;
  const rate = (to.reading.value - from.reading.value) / daysBetween(from.on.first, to.on.first);
  const sinceReading = rate * daysBetween(to.on.first, done.on.first) + hours;
  return addDays(to.on.first, Math.floor(sinceReading / rate));
}

function termsOf(duty: Duty): CertificateTerms | undefined {
  return limitsOf(duty).flatMap((limit) => ('terms' in limit ? [limit.terms] : []))[0];
}

/** Printed, or as long as it runs from the survey or from the expiry that the sentence says it goes on from. */
function certificateOf({ facts, sentence, duty, item }: Case): { begins: Day | null; expires: Day | null } {
  const terms = termsOf(duty);
  const survey = facts.findLast(({ fact }) => fact !== 'printed_expiry');
  const print = facts.findLast(({ fact }) => fact === 'printed_expiry');
  const kept = dayNamed(/ran to (\d{1,2} [A-Z][a-z]+ \d{4}), and/.exec(sentence)?.[1] ?? '');
  const begins = kept ?? survey?.on.first ?? null;
  const printed = /expiry on the certificate is/.test(sentence) ? print?.on.last : undefined;
  if (!terms?.runs) return { begins, expires: printed ?? null };
  const period = periodOf(terms.runs.period);
  const setting = item.attributes.expiryLessOneDay === false ? 'corresponding_day' : 'day_before';
  const fromSurvey = terms.runs.fromSurvey === 'as_issuer_sets' ? setting : terms.runs.fromSurvey;
  const how = kept === null ? fromSurvey : terms.runs.fromOldExpiry;
  if (begins === null)
    return { begins: printed === undefined ? null : firstDay(printed, period, terms), expires: printed ?? null };
  const worked = how === 'day_before' ? endOfPeriodBeginningWith(begins, period) : addPeriod(begins, period);
  return { begins, expires: printed ?? worked };
}

function firstDay(expires: Day, period: Period, { runs }: CertificateTerms): Day {
  return addPeriod(runs?.fromSurvey === 'day_before' ? addDays(expires, 1) : expires, backwards(period));
}

function replayOnce(one: Case): Day | null {
  const period = periodSaid(one.words);
  const renewed = one.assumed.find((said) => said.startsWith('It is taken to be renewed on its expiry'));
  const survey = one.facts.find(({ fact }) => fact !== 'printed_expiry')?.on.first;
  const begins = renewed ? dayNamed(renewed.slice(0, renewed.indexOf(':'))) : (survey ?? certificateOf(one).begins);
  return begins === null ? null : endOfPeriodBeginningWith(begins, period);
}
