/**
 * How long a certificate runs, and what the next one counts from. Certificates follow one another: a new
 * one that goes on from the old expiry loses nothing by an early survey and gains nothing by a late one.
 */
import type { PeriodText, Reset } from './rule.ts';

/** Where a period ends: on the day with the same number, on the day before, or as the issuer's setting says. */
export type LastDay = 'corresponding_day' | 'day_before' | 'as_issuer_sets';

export type CertificateTerms = {
  /** What it is called inside a sentence: "workboat certificate". */
  readonly name: string;
  /** Surveys that begin a certificate whatever was before. */
  readonly begunBy: readonly Reset[];
  /** Surveys that renew the one before. */
  readonly renewedBy: readonly Reset[];
  /** Absent: nobody here knows how long it runs, and only the expiry printed on it counts. */
  readonly runs?: {
    readonly period: PeriodText;
    readonly fromSurvey: LastDay;
    readonly fromOldExpiry: Exclude<LastDay, 'as_issuer_sets'>;
  };
  /** Renewed no earlier than this before the old expiry, it goes on from there; earlier, from the survey. */
  readonly keepsExpiryWithin: PeriodText;
  /** What a renewal after the old expiry counts from. */
  readonly whenLate: 'old_expiry' | 'survey';
};

/**
 * The span around an anniversary in which the survey counts for it. Without `before` no opening is stated:
 * a survey counts as soon as the window of the anniversary before has closed. `beginning_with`: `after` is a
 * period that begins with the anniversary itself.
 */
export type AnniversaryWindow = {
  readonly before?: PeriodText;
  readonly after: PeriodText;
  readonly counting?: 'beginning_with';
};
