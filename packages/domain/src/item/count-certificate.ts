/** Limits that hang on a certificate's life: its last day, and what is due once in it. */
import { endOfPeriodBeginningWith } from '../calendar/period.ts';
import { periodOf } from '../calendar/words.ts';
import type { Limit } from '../rule/rule.ts';
import { certificateInForce } from './certificate.ts';
import { afterRenewal, counted, noCertificate, surveysDuring } from './certificate-count.ts';
import type { Fact } from './fact.ts';
import type { Grounds, LimitCount } from './limit-count.ts';
import { factInWords } from './words.ts';

type Of<Kind extends Limit['kind']> = Extract<Limit, { kind: Kind }>;

export function countExpiry(limit: Of<'certificate_expiry'>, grounds: Grounds): LimitCount {
  const certificate = certificateInForce(limit.terms, grounds);
  if (certificate?.expires == null) return noCertificate(limit, limit.terms, grounds);
  return { ...counted(limit, certificate, grounds), on: certificate.expires };
}

export function countOnce(limit: Of<'once_in_certificate'>, grounds: Grounds): LimitCount {
  const certificate = certificateInForce(limit.terms, grounds);
  if (certificate?.begins == null) return noCertificate(limit, limit.terms, grounds);
  const { begins, expires, survey } = certificate;
  const [done] = surveysDuring(certificate, limit.terms, grounds);
  const base = ofSurvey(counted(limit, certificate, grounds, 'first_day'), survey);
  const from = survey?.on.first ?? begins;
  if (!done || expires === null) return { ...base, on: endOfPeriodBeginningWith(from, periodOf(limit.within)) };
  const next = afterRenewal(base, certificate);
  const on = endOfPeriodBeginningWith(expires, periodOf(limit.within));
  return { ...next, on, basis: factInWords(done.fact), factIds: [done.fact.id] };
}

/** It counts from the survey itself, also where the certificate goes on from the one before. */
function ofSurvey(base: LimitCount, survey: Fact | null): LimitCount {
  return survey ? { ...base, basis: factInWords(survey), factIds: [survey.id] } : base;
}
