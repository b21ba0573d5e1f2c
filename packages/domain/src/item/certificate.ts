/** Which certificate is in force, from when to when: worked along its surveys, each new one from the one before. */
import { addDays, type Day } from '../calendar/day.ts';
import { addPeriod, backwards, endOfPeriodBeginningWith } from '../calendar/period.ts';
import { dayInWords, periodInWords, periodOf, recordedDateInWords } from '../calendar/words.ts';
import type { CertificateTerms, LastDay } from '../rule/certificate-terms.ts';
import { ATTRIBUTES, type Attributes } from './attribute.ts';
import { dateOnRecord } from './date-on-record.ts';
import type { Fact } from './fact.ts';
import { dayOfFact } from './facts-on-record.ts';
import { actsThatCount } from './last-done.ts';
import type { Grounds } from './limit-count.ts';
import { isOfWhatWasBefore, isOfWhatWasRenewed } from './renewed-print.ts';
import { factInWords } from './words.ts';

export type Certificate = {
  /** The survey that it rests on; `null`: only its expiry is on record. */
  readonly survey: Fact | null;
  /** `null`: neither a survey nor how long it runs is known. */
  readonly begins: Day | null;
  /** Its last day. */
  readonly expires: Day | null;
  readonly factIds: readonly string[];
  /** Opens the sentence. */
  readonly basis: string;
  readonly assumed: readonly string[];
  readonly doubts: readonly string[];
};

/** `null`: neither a survey that begins or renews it nor an expiry is on record. */
export function certificateInForce(terms: CertificateTerms, grounds: Grounds): Certificate | null {
  const { facts, attributes } = grounds;
  const begun = actsThatCount(facts, terms.begunBy);
  const surveys = actsThatCount(facts, [...terms.begunBy, ...terms.renewedBy]);
  const isEarlier = (print: Fact, survey: Fact) =>
    begun.includes(survey) ? isOfWhatWasBefore(print, survey) : isOfWhatWasRenewed(print, survey);
  const prints = facts.filter((fact) => fact.fact === 'printed_expiry');
  const [first] = surveys;
  let certificate = ofPrintAlone(first ? prints.filter((print) => isEarlier(print, first)) : prints, terms);
  for (const [at, survey] of surveys.entries()) {
    const next = surveys[at + 1];
    const own = prints.filter((print) => !isEarlier(print, survey) && (!next || isEarlier(print, next)));
    certificate = issued(survey, begun.includes(survey) ? null : certificate, own, terms, attributes);
  }
  return certificate;
}

function ofPrintAlone(prints: readonly Fact[], terms: CertificateTerms): Certificate | null {
  const print = dateOnRecord(prints, ['printed_expiry']);
  if (!print) return null;
  const { fact, doubts } = print;
  const begins = terms.runs ? firstDayOf(fact.on.last, terms.runs) : null;
  return {
    survey: null,
    begins,
    expires: fact.on.last,
    factIds: [fact.id],
    basis: printedOn(fact),
    assumed: [],
    doubts,
  };
}

function issued(
  survey: Fact,
  before: Certificate | null,
  prints: readonly Fact[],
  terms: CertificateTerms,
  attributes: Attributes,
): Certificate {
  const worked = workedOut(survey, before, terms, attributes);
  const print = dateOnRecord(prints, ['printed_expiry']);
  if (!print) return worked;
  const { fact, doubts } = print;
  const late = worked.expires !== null && fact.on.last > worked.expires ? [laterThanAllowed(worked.expires)] : [];
  return {
    ...worked,
    expires: fact.on.last,
    factIds: [...worked.factIds, fact.id],
    basis: printedOn(fact),
    assumed: [],
    doubts: [...doubts, ...late],
  };
}

/** As the clause has it, before anything that is printed on it. */
function workedOut(
  survey: Fact,
  before: Certificate | null,
  { runs, ...terms }: CertificateTerms,
  attributes: Attributes,
): Certificate {
  const day = survey.on.first;
  const plain = { survey, begins: day, factIds: [survey.id], basis: beganInWords(survey), doubts: [] };
  if (!runs) return { ...plain, expires: null, assumed: [] };
  const kept = before && goesOnFrom(before.expires, dayOfFact(survey), runs, terms);
  if (!before || !kept) {
    const { how, assumed } = lastDayOf(runs.fromSurvey, attributes);
    return { ...plain, expires: end(day, runs.period, how), assumed: [...assumed, NOT_PRINTED] };
  }
  return {
    ...plain,
    begins: kept,
    expires: end(kept, runs.period, runs.fromOldExpiry),
    factIds: [...before.factIds, survey.id],
    basis: `${plain.basis}; the certificate before it ran to ${dayInWords(kept)}, and the new one goes on from there`,
    assumed: [...before.assumed.filter((said) => said !== NOT_PRINTED), NOT_PRINTED],
    doubts: before.doubts,
  };
}

/** Of what is counted from its first day it need not be said. */
export const NOT_PRINTED =
  'The expiry printed on the certificate is not on record: worked out as the latest that the clause allows.';

type Runs = NonNullable<CertificateTerms['runs']>;

/** The old expiry, where the new period goes on from it. One that is over by then cannot be gone on from. */
function goesOnFrom(
  old: Day | null,
  survey: Day,
  runs: Runs,
  { keepsExpiryWithin, whenLate }: Pick<CertificateTerms, 'keepsExpiryWithin' | 'whenLate'>,
): Day | null {
  if (old === null || end(old, runs.period, runs.fromOldExpiry) <= survey) return null;
  if (survey > old) return whenLate === 'old_expiry' ? old : null;
  return survey >= addPeriod(old, backwards(periodOf(keepsExpiryWithin))) ? old : null;
}

function lastDayOf(
  lastDay: LastDay,
  attributes: Attributes,
): { how: Exclude<LastDay, 'as_issuer_sets'>; assumed: string[] } {
  if (lastDay !== 'as_issuer_sets') return { how: lastDay, assumed: [] };
  const { id, words } = ATTRIBUTES.expiryLessOneDay;
  if (attributes[id] === false) return { how: 'corresponding_day', assumed: [] };
  const assumed = attributes[id] === true ? [] : [`Not on record, and taken to be so: ${words}.`];
  return { how: 'day_before', assumed };
}

function end(begins: Day, period: string, lastDay: Exclude<LastDay, 'as_issuer_sets'>): Day {
  switch (lastDay) {
    case 'corresponding_day':
      return addPeriod(begins, periodOf(period));
    case 'day_before':
      return endOfPeriodBeginningWith(begins, periodOf(period));
  }
}

/** Back from the last day to the first. */
function firstDayOf(expires: Day, { period, fromSurvey }: Runs): Day {
  const back = backwards(periodOf(period));
  return fromSurvey === 'day_before' ? addPeriod(addDays(expires, 1), back) : addPeriod(expires, back);
}

function beganInWords(survey: Fact): string {
  return survey.fact === 'installed' ? `Issued ${recordedDateInWords(survey.on)}` : factInWords(survey);
}

function printedOn(print: Fact): string {
  return `The expiry on the certificate is ${dayInWords(print.on.last)}`;
}

function laterThanAllowed(latest: Day): string {
  return `The expiry on the certificate lies after ${dayInWords(latest)}, the latest that the clause allows.`;
}

/** "5 years", for a sentence. */
export function lengthInWords({ runs }: CertificateTerms): string {
  return runs ? periodInWords(runs.period) : 'a time that only its expiry tells';
}
