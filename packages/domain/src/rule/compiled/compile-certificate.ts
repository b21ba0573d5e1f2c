/** Certificates in numbers: which is in force and from when to when, the same as `certificateInForce`. */
import { addDays, type Day } from '../../calendar/day.ts';
import { addPeriod, backwards, endOfPeriodBeginningWith } from '../../calendar/period.ts';
import { periodOf } from '../../calendar/words.ts';
import type { CertificateTerms, LastDay } from '../certificate-terms.ts';
import type { Limit } from '../rule.ts';
import type { Aboard } from './aboard.ts';
import { attributeCode, NO_DAY, NONE } from './codes.ts';
import type { NumberValue } from './compile-condition.ts';
import { isBefore, isRenewed, type OwnPrint, printAmong } from './dates-aboard.ts';
import { doesCount, type ResetTable, resetTable } from './resets.ts';

type Of<Kind extends Limit['kind']> = Extract<Limit, { kind: Kind }>;

/** `NO_DAY` for what is not known; `survey`: the row that it rests on. Both days unknown: there is none. */
export type InForce = { readonly begins: number; readonly expires: number; readonly survey: number };

const NO_CERTIFICATE: InForce = { begins: NO_DAY, expires: NO_DAY, survey: NONE };

export type CertificatePlan = {
  readonly inForce: (aboard: Aboard) => InForce;
  /** The duty's own acts in its life, in order of day: their days. */
  readonly during: (certificate: InForce, aboard: Aboard) => number[];
};

export function compileCertificate(terms: CertificateTerms, number: NumberValue): CertificatePlan {
  const begun = resetTable(terms.begunBy);
  const surveys = resetTable([...terms.begunBy, ...terms.renewedBy]);
  const own = ownPrints(begun);
  const issue = compileIssue(terms, number);
  return {
    inForce: (aboard) => {
      const all = actsThatCount(surveys, aboard);
      let certificate = ofPrintAlone(printAmong(own, aboard, NONE, all[0] ?? NONE), terms, aboard);
      for (const [at, survey] of all.entries()) {
        const before = doesCount(begun, aboard, survey) ? NO_CERTIFICATE : certificate;
        const print = printAmong(own, aboard, survey, all[at + 1] ?? NONE);
        const issued = issue(survey, before, aboard);
        certificate = print === NONE ? issued : { ...issued, expires: aboard.columns.facts.last[print] as number };
      }
      return certificate;
    },
    during: (certificate, aboard) => surveysDuring(certificate, surveys, aboard),
  };
}

function actsThatCount(table: ResetTable, aboard: Aboard): number[] {
  return Array.from(aboard.rows.subarray(0, aboard.count)).filter((row) => doesCount(table, aboard, row));
}

/** Not of the certificate before `survey`, and of the one before `next`. */
function ownPrints(begun: ResetTable): OwnPrint {
  const isEarlier = (print: number, survey: number, aboard: Aboard) =>
    doesCount(begun, aboard, survey) ? isBefore(print, survey, aboard) : isRenewed(print, survey, aboard);
  return (print, aboard, survey, next) =>
    (survey === NONE || !isEarlier(print, survey, aboard)) && (next === NONE || isEarlier(print, next, aboard));
}

function ofPrintAlone(print: number, { runs }: CertificateTerms, { columns }: Aboard): InForce {
  if (print === NONE) return NO_CERTIFICATE;
  const expires = columns.facts.last[print] as Day;
  if (!runs) return { begins: NO_DAY, expires, survey: NONE };
  const back = backwards(periodOf(runs.period));
  const begins = addPeriod(runs.fromSurvey === 'day_before' ? addDays(expires, 1) : expires, back);
  return { begins, expires, survey: NONE };
}

type Issue = (survey: number, before: InForce, aboard: Aboard) => InForce;

/** As the clause has it, before anything that is printed on it. */
function compileIssue({ runs, keepsExpiryWithin, whenLate }: CertificateTerms, number: NumberValue): Issue {
  const setting = attributeCode('expiryLessOneDay');
  const corresponds = number(false);
  if (!runs)
    return (survey, _, { columns }) => ({ begins: columns.facts.first[survey] as number, expires: NO_DAY, survey });
  const kept = (old: number, survey: number): number => {
    if (old === NO_DAY || endOf(old, runs.period, runs.fromOldExpiry) <= survey) return NO_DAY;
    if (survey > old) return whenLate === 'old_expiry' ? old : NO_DAY;
    return survey >= addPeriod(old as Day, backwards(periodOf(keepsExpiryWithin))) ? old : NO_DAY;
  };
  const setBy = ({ value }: Aboard) => (value[setting] === corresponds ? 'corresponding_day' : 'day_before');
  return (survey, before, aboard) => {
    const { first, day } = aboard.columns.facts;
    const old = kept(before.expires, day[survey] as number);
    if (old !== NO_DAY) return { begins: old, expires: endOf(old, runs.period, runs.fromOldExpiry), survey };
    const begins = first[survey] as number;
    const how = runs.fromSurvey === 'as_issuer_sets' ? setBy(aboard) : runs.fromSurvey;
    return { begins, expires: endOf(begins, runs.period, how), survey };
  };
}

function endOf(begins: number, period: string, lastDay: Exclude<LastDay, 'as_issuer_sets'>): number {
  switch (lastDay) {
    case 'corresponding_day':
      return addPeriod(begins as Day, periodOf(period));
    case 'day_before':
      return endOfPeriodBeginningWith(begins as Day, periodOf(period));
  }
}

function surveysDuring({ survey, begins }: InForce, surveys: ResetTable, aboard: Aboard): number[] {
  const { day } = aboard.columns.facts;
  const since = survey !== NONE ? (day[survey] as number) : begins === NO_DAY ? 0 : begins;
  return actsThatCount(aboard.resets, aboard)
    .filter((row) => !doesCount(surveys, aboard, row) && (day[row] as number) > since)
    .map((row) => day[row] as number);
}

export function expiryDay({ terms }: Of<'certificate_expiry'>, number: NumberValue): (aboard: Aboard) => number {
  const plan = compileCertificate(terms, number);
  return (aboard) => plan.inForce(aboard).expires;
}

/** Once in its life; when that is done, once in the life of the one after it. */
export function onceDay({ terms, within }: Of<'once_in_certificate'>, number: NumberValue): (aboard: Aboard) => number {
  const plan = compileCertificate(terms, number);
  return (aboard) => {
    const certificate = plan.inForce(aboard);
    const { begins, expires, survey } = certificate;
    if (begins === NO_DAY) return NO_DAY;
    const isDone = expires !== NO_DAY && plan.during(certificate, aboard).length > 0;
    const surveyed = survey === NONE ? begins : (aboard.columns.facts.first[survey] as number);
    return endOfPeriodBeginningWith((isDone ? expires : surveyed) as Day, periodOf(within));
  };
}
