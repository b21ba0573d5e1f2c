import type { AnniversaryWindow } from '../certificate-terms.ts';
import type { Rule } from '../rule.ts';
import { anySurvey, CONVENTION, SMALL_VESSEL_CODE, SURVEYOR_OR_INSPECTOR, surveyed } from './certificate-shapes.ts';

const THREE_MONTHS: AnniversaryWindow = { before: 'P3M', after: 'P3M' };

export const CONVENTION_CERTIFICATE_RULES: readonly Rule[] = [
  {
    id: 'hssc-annual',
    scheme: 'harmonised_survey',
    weight: 'certificate',
    kinds: ['convention_certificate'],
    inWords:
      "An annual survey is done within three months either way of each anniversary of the certificate's expiry. The next one stays on the anniversary, whenever this one was done. A survey before the window opens does not count unless the certificate is endorsed with another anniversary: enter that one as the anniversary date.",
    source: {
      publication: '46 CFR; A.1104(29) family',
      clause: '91.27-1(a); HSSC 2.x',
      address:
        'https://webarchive.library.unt.edu/eot2008/20090511051946/http://edocket.access.gpo.gov/cfr_2006/octqtr/46cfr91.27-1.htm',
      status: 'read',
      fromMemory:
        'that subchapters T (176.500) and R (169.227) say the same, and that a survey before the window moves the anniversary by endorsement only',
    },
    duties: [
      {
        id: 'annual_survey',
        action: { kind: 'inspect', words: 'Have the annual survey done' },
        inWords: 'An annual survey is done within 3 months either way of the anniversary, and the next stays on it',
        limits: [
          {
            kind: 'anniversary',
            terms: CONVENTION,
            of: 'expiry',
            window: THREE_MONTHS,
            endorsed: 'anniversaryDate',
          },
        ],
        resets: anySurvey(SURVEYOR_OR_INSPECTOR),
      },
    ],
    checks: [],
  },
  {
    id: 'hssc-inter',
    scheme: 'harmonised_survey',
    weight: 'certificate',
    kinds: ['convention_certificate'],
    inWords:
      'An intermediate survey takes the place of one annual survey: within three months either way of the second or the third anniversary. Between the two windows is no window.',
    source: {
      publication: 'HSSC Survey Guidelines 2011',
      clause: '2.4',
      address: 'https://shipinspection.eu/when-are-intermediate-surveys-carried-out-in-the-hssc',
      status: 'second_hand',
    },
    duties: [
      {
        id: 'intermediate_survey',
        action: { kind: 'inspect', words: 'Have the intermediate survey done' },
        inWords:
          'An intermediate survey is done within 3 months either way of the second or the third anniversary, in place of that annual survey',
        limits: [{ kind: 'one_of_anniversaries', terms: CONVENTION, numbers: [2, 3], window: THREE_MONTHS }],
        resets: [surveyed('intermediate_survey', SURVEYOR_OR_INSPECTOR)],
      },
    ],
    checks: [],
  },
  {
    id: 'hssc-renew',
    scheme: 'harmonised_survey',
    weight: 'certificate',
    kinds: ['convention_certificate'],
    inWords:
      'A renewal survey may be completed up to three months before the expiry without losing any of the old certificate: the new one keeps its day and month, also when the survey is late or the old one was extended. A survey done earlier begins a new period.',
    source: {
      publication: 'HSSC introduction; HSC Code',
      clause: '1.8.5-1.8.6',
      address: 'https://marinegyaan.com/what-does-the-harmonized-system-provides/',
      status: 'second_hand',
    },
    alsoAsks: [
      'How far the Administration may extend a certificate is not worked out here; the next period begins on the old expiry all the same.',
    ],
    duties: [
      {
        id: 'renewal_survey',
        action: { kind: 'inspect', words: 'Have the renewal survey done' },
        inWords:
          'A certificate is renewed by its expiry, which is five years on from the survey on the corresponding day or the day before, as the Administration dates it',
        limits: [{ kind: 'certificate_expiry', terms: CONVENTION }],
        window: { before: 'P3M', after: 'P0D' },
        expires: true,
        resets: CONVENTION.renewedBy,
      },
    ],
    checks: [],
  },
  {
    id: 'carib',
    scheme: 'caribbean_small_commercial',
    weight: 'certificate',
    kinds: ['certificate_of_inspection'],
    inWords:
      'A certificate of inspection runs five years. She is inspected every year between the tenth and the fourteenth month after issue. The inspection for renewal may come up to two months before the expiry; in the last 30 days the new certificate is dated from the old expiry, otherwise from the inspection.',
    source: {
      publication: 'small vessel code (title not shown in excerpt)',
      clause: '12.1-12.2.2',
      address: 'https://www.imorules.com/GUID-00B9867B-AAEC-4B8E-A206-1C0A5517E2BA.html',
      status: 'read',
    },
    alsoAsks: [
      'With more than 12 passengers on international voyages the certificate runs one year: record the expiry printed on it, which goes before the five years.',
    ],
    duties: [
      {
        id: 'annual_inspection',
        action: { kind: 'inspect', words: 'Have the annual inspection done' },
        inWords: 'She is inspected every year between the 10th and the 14th month after the issue of the certificate',
        limits: [
          {
            kind: 'anniversary',
            terms: SMALL_VESSEL_CODE,
            of: 'first_day',
            window: { before: 'P2M', after: 'P2M' },
          },
        ],
        resets: anySurvey(SURVEYOR_OR_INSPECTOR),
      },
      {
        id: 'renewal',
        action: { kind: 'inspect', words: 'Have the inspection for renewal done' },
        inWords:
          'A certificate of inspection runs 5 years, from the old expiry where the inspection falls in its last 30 days, and otherwise from the inspection',
        limits: [{ kind: 'certificate_expiry', terms: SMALL_VESSEL_CODE }],
        window: { before: 'P2M', after: 'P0D' },
        expires: true,
        resets: SMALL_VESSEL_CODE.renewedBy,
      },
    ],
    checks: [],
  },
];
