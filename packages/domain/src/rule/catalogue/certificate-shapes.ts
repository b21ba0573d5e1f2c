/** What the certificate rules share: which survey is which, and who does them. */
import type { Capacity, TestKind } from '../../item/fact.ts';
import type { CertificateTerms } from '../certificate-terms.ts';
import type { Reset } from '../rule.ts';

export const SURVEYOR: readonly Capacity[] = ['surveyor'];
export const SURVEYOR_OR_INSPECTOR: readonly Capacity[] = ['surveyor', 'marine_inspector'];

export function surveyed(test: TestKind, by: readonly Capacity[]): Reset {
  return { act: 'inspected', tests: [test], by };
}

/** Any survey that counts as a yearly one: a renewal or an intermediate survey takes its place. */
export function anySurvey(by: readonly Capacity[]): readonly Reset[] {
  return [
    surveyed('annual_survey', by),
    surveyed('intermediate_survey', by),
    surveyed('renewal_survey', by),
    surveyed('initial_survey', by),
  ];
}

export const WORKBOAT: CertificateTerms = {
  name: 'workboat certificate',
  begunBy: [surveyed('initial_survey', SURVEYOR)],
  renewedBy: [surveyed('renewal_survey', SURVEYOR)],
  runs: { period: 'P5Y', fromSurvey: 'day_before', fromOldExpiry: 'day_before' },
  keepsExpiryWithin: 'P3M',
  whenLate: 'old_expiry',
};

export const CONVENTION: CertificateTerms = {
  name: 'certificate',
  begunBy: [surveyed('initial_survey', SURVEYOR_OR_INSPECTOR)],
  renewedBy: [surveyed('renewal_survey', SURVEYOR_OR_INSPECTOR)],
  runs: { period: 'P5Y', fromSurvey: 'as_issuer_sets', fromOldExpiry: 'corresponding_day' },
  keepsExpiryWithin: 'P3M',
  whenLate: 'old_expiry',
};

export const SMALL_VESSEL_CODE: CertificateTerms = {
  name: 'certificate of inspection',
  begunBy: [surveyed('initial_survey', SURVEYOR_OR_INSPECTOR), { act: 'installed', by: [] }],
  renewedBy: [surveyed('renewal_survey', SURVEYOR_OR_INSPECTOR)],
  runs: { period: 'P5Y', fromSurvey: 'as_issuer_sets', fromOldExpiry: 'corresponding_day' },
  keepsExpiryWithin: 'P30D',
  whenLate: 'survey',
};

export const BOAT_SAFETY: CertificateTerms = {
  name: 'boat safety certificate',
  begunBy: [],
  renewedBy: [{ act: 'inspected', by: ['registered_examiner'] }],
  runs: { period: 'P4Y', fromSurvey: 'day_before', fromOldExpiry: 'day_before' },
  keepsExpiryWithin: 'P2M',
  whenLate: 'survey',
};

/** How long it runs was not read anywhere: only what is printed on it counts. */
export const SPORT_OR_PLEASURE: CertificateTerms = {
  name: 'small vessel certificate',
  begunBy: [surveyed('initial_survey', SURVEYOR)],
  renewedBy: [surveyed('renewal_survey', SURVEYOR)],
  keepsExpiryWithin: 'P0D',
  whenLate: 'survey',
};
