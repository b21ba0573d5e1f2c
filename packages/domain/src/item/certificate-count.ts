/** What the limits share that hang on a certificate. */
import type { Day } from '../calendar/day.ts';
import { dayInWords } from '../calendar/words.ts';
import type { CertificateTerms } from '../rule/certificate-terms.ts';
import type { Limit } from '../rule/rule.ts';
import { type Certificate, NOT_PRINTED } from './certificate.ts';
import type { Fact } from './fact.ts';
import { dayOfFact } from './facts-on-record.ts';
import { actsThatCount } from './last-done.ts';
import { type Grounds, type LimitCount, notCounted, whereFound } from './limit-count.ts';

export type Act = { readonly fact: Fact; readonly day: Day };
export const withDay = (fact: Fact): Act => ({ fact, day: dayOfFact(fact) });

/** The duty's own surveys in the life of the certificate, without those that began it. */
export function surveysDuring(
  { survey, begins }: Certificate,
  terms: CertificateTerms,
  grounds: Grounds,
): readonly Act[] {
  const begun = actsThatCount(grounds.facts, [...terms.begunBy, ...terms.renewedBy]);
  const since = survey ? dayOfFact(survey) : (begins ?? 0);
  return actsThatCount(grounds.facts, grounds.duty.resets)
    .filter((fact) => !begun.includes(fact))
    .map(withDay)
    .filter(({ day }) => day > since);
}

export function noCertificate(limit: Limit, terms: CertificateTerms, grounds: Grounds): LimitCount {
  const what = terms.runs
    ? `the survey that began the ${terms.name} or the expiry printed on it`
    : `the expiry printed on the ${terms.name}`;
  return notCounted(limit, grounds, { what, whereFound: whereFound('printed_expiry', grounds) });
}

/** What is counted from its last day, or with `from` its first. */
export function counted(
  limit: Limit,
  certificate: Certificate,
  grounds: Grounds,
  from: 'first_day' | 'expiry' = 'expiry',
): LimitCount {
  const none = notCounted(limit, grounds, { what: '', whereFound: '' });
  const { basis, factIds, doubts } = certificate;
  const assumed = certificate.assumed.filter((said) => from === 'expiry' || said !== NOT_PRINTED);
  return { ...none, missing: [], basis, factIds, assumed, doubts };
}

/** The surveys of this certificate are all done: the next falls under the one after it. */
export function afterRenewal(base: LimitCount, { expires }: Certificate): LimitCount {
  const renewed = `It is taken to be renewed on its expiry, ${dayInWords(expires as Day)}: the renewal decides.`;
  return { ...base, assumed: [...base.assumed, renewed] };
}
