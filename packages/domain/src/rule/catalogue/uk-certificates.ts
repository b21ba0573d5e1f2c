import type { Rule, Source } from '../rule.ts';
import { anySurvey, BOAT_SAFETY, SPORT_OR_PLEASURE, SURVEYOR, surveyed, WORKBOAT } from './certificate-shapes.ts';
import { every, sinceLastDone } from './shapes.ts';

const REG_13: Omit<Source, 'clause'> = {
  publication: 'SI 2023/1216',
  address: 'https://legislation.gov.uk/uksi/2023/1216/regulation/13/made/data.html',
  status: 'read',
};

const REG_8: Omit<Source, 'clause'> = {
  publication: 'SI 2023/1216',
  address: 'https://legislation.gov.uk/en/uksi/2023/1216/part/2/made',
  status: 'read',
};

export const UK_CERTIFICATE_RULES: readonly Rule[] = [
  {
    id: 'cert-ukwb',
    scheme: 'uk_workboat',
    weight: 'certificate',
    kinds: ['workboat_certificate'],
    inWords:
      'A workboat certificate runs for no longer than five years beginning with the day on which the compliance (initial) survey was completed, and is valid to the end of the day stated on it. What is printed on it goes before what is worked out.',
    source: { ...REG_13, clause: 'regs 8(5), 13' },
    duties: [
      {
        id: 'certificate',
        action: { kind: 'inspect', words: 'Have the renewal survey done and the certificate renewed' },
        inWords: 'A workboat certificate runs for no longer than 5 years beginning with the completion of its survey',
        limits: [{ kind: 'certificate_expiry', terms: WORKBOAT }],
        expires: true,
        resets: WORKBOAT.renewedBy,
      },
    ],
    checks: [],
  },
  {
    id: 'renew-ukwb',
    scheme: 'uk_workboat',
    weight: 'certificate',
    kinds: ['workboat_certificate'],
    inWords:
      'A renewal survey completed in the last three months before the old expiry, or after it, gives a certificate of five years beginning with the old expiry; one completed earlier gives five years beginning with the day of the renewal.',
    source: { ...REG_13, clause: 'reg 13(2)(b)(i)-(iii)' },
    duties: [
      {
        id: 'renewal_survey',
        action: { kind: 'inspect', words: 'Have a surveyor of the certifying authority do the renewal survey' },
        inWords: 'A renewal survey in the last 3 months before the expiry loses nothing of the old certificate',
        limits: [{ kind: 'certificate_expiry', terms: WORKBOAT }],
        window: { before: 'P3M', after: 'P0D' },
        expires: true,
        resets: WORKBOAT.renewedBy,
      },
    ],
    checks: [],
  },
  {
    id: 'annual-ukwb',
    scheme: 'uk_workboat',
    weight: 'certificate',
    kinds: ['workboat_certificate'],
    inWords:
      'An annual survey is done by the end of three months beginning with the anniversary of the first day of the certificate (that of the compliance or initial survey; after a renewal that goes on from the old expiry, that expiry), and by the end of 15 months beginning with the survey before it. No opening is stated, so an early survey counts; it pulls the 15 months forward.',
    source: { ...REG_8, clause: 'reg 8(3)(a),(b)' },
    duties: [
      {
        id: 'annual_survey',
        action: { kind: 'inspect', words: 'Have a surveyor of the certifying authority do the annual survey' },
        inWords:
          'An annual survey is done by the end of 3 months beginning with the anniversary, and of 15 months beginning with the survey before it',
        limits: [
          {
            kind: 'anniversary',
            terms: WORKBOAT,
            of: 'first_day',
            window: { after: 'P3M', counting: 'beginning_with' },
          },
        ],
        noLaterThan: [{ kind: 'after', from: 'last_done', plus: every('P15M'), counting: 'beginning_with' }],
        resets: anySurvey(SURVEYOR),
      },
    ],
    checks: [],
  },
  {
    id: 'inter-ukwb',
    scheme: 'uk_workboat',
    weight: 'certificate',
    kinds: ['workboat_certificate'],
    inWords:
      'An intermediate survey is done within 36 months beginning with the compliance (initial) survey or the previous renewal.',
    source: { ...REG_8, clause: 'reg 8(4)' },
    duties: [
      {
        id: 'intermediate_survey',
        action: { kind: 'inspect', words: 'Have a surveyor of the certifying authority do the intermediate survey' },
        inWords: 'An intermediate survey is done once in the life of a workboat certificate',
        limits: [{ kind: 'once_in_certificate', terms: WORKBOAT, within: 'P36M' }],
        resets: [surveyed('intermediate_survey', SURVEYOR)],
      },
    ],
    checks: [],
  },
  {
    id: 'deficient',
    scheme: 'uk_workboat',
    weight: 'certificate',
    kinds: ['workboat_certificate'],
    inWords:
      'A surveyor who finds the vessel deficient names what must be done and a reasonable period for it, and afterwards confirms to the owner and the authority that it was done. Unfinished, the certificate may be suspended. Record the survey with its outcome "failed" or "partly" and, in "until", the last day of that period.',
    source: {
      publication: 'SI 2023/1216',
      clause: 'reg 20(2)-(6)',
      address: 'https://legislation.gov.uk/en/uksi/2023/1216/regulation/20/made',
      status: 'read',
    },
    duties: [
      {
        id: 'rectification',
        action: { kind: 'inspect', words: 'Put right what the surveyor named, and have it confirmed' },
        inWords:
          'What a surveyor finds deficient is put right within the period then named, and the surveyor confirms it',
        limits: [{ kind: 'deadline_set' }],
        resets: [{ act: 'inspected', by: SURVEYOR }],
      },
    ],
    checks: [],
  },
  {
    id: 'cert-uksp',
    scheme: 'uk_small_commercial',
    weight: 'certificate',
    kinds: ['small_commercial_certificate'],
    inWords:
      'A small vessel certificate is in force under the Sport or Pleasure Vessel Code since 12 December 2025, in place of the earlier regulations and codes. How long it runs and when it is surveyed between was not read: only the expiry printed on it is counted.',
    source: {
      publication: 'SI 2025/1195 + Sport or Pleasure Vessel Code',
      clause: 'reg 3',
      address: 'https://www.legislation.gov.uk/uksi/2025/1195/part/1/data.xht?view=snippet&wrap=true',
      status: 'read',
    },
    alsoAsks: ["The code's surveys between renewals are not worked out here: its text was not reached."],
    duties: [
      {
        id: 'certificate',
        action: { kind: 'inspect', words: 'Have the certificate renewed by the certifying authority' },
        inWords: 'A small vessel certificate is good until the day printed on it',
        limits: [{ kind: 'certificate_expiry', terms: SPORT_OR_PLEASURE }],
        expires: true,
        resets: SPORT_OR_PLEASURE.renewedBy,
      },
    ],
    checks: [],
  },
  {
    id: 'bss',
    scheme: 'uk_inland',
    weight: 'certificate',
    kinds: ['inland_boat_certificate'],
    inWords:
      'A boat safety examination is good for four years less one day. Where two months or less are left on the one before, the four years are counted from its expiry.',
    source: {
      publication: 'Boat Safety Scheme dating guidance',
      clause: 'dating certificates',
      address: 'https://boatsafetyscheme.org/professionals/examination/examination-guidance/dating-certificates',
      status: 'read',
    },
    duties: [
      {
        id: 'examination',
        action: { kind: 'inspect', words: 'Have a registered examiner examine the boat' },
        inWords: 'A boat safety examination is good for 4 years less one day',
        limits: [{ kind: 'certificate_expiry', terms: BOAT_SAFETY }],
        window: { before: 'P2M', after: 'P0D' },
        expires: true,
        resets: BOAT_SAFETY.renewedBy,
      },
    ],
    checks: [],
  },
  {
    id: 'bss-re',
    scheme: 'uk_inland',
    weight: 'certificate',
    kinds: ['inland_boat_certificate'],
    inWords:
      'After an examination that the boat did not pass, only what failed is examined again, within three calendar months at most.',
    source: {
      publication: 'Boat Safety Scheme',
      clause: 're-examination gap',
      address: 'https://www.boatsafetyscheme.org/professionals/examination/examination-guidance/re-examination-gap/',
      status: 'read',
    },
    alsoAsks: ['If the boat changes owner in between, or the three months pass, the whole examination is done again.'],
    duties: [
      {
        id: 're_examination',
        action: { kind: 'inspect', words: 'Have the examiner look again at what did not pass' },
        inWords: 'What did not pass is examined again within 3 calendar months',
        limits: [{ kind: 'after', from: 'first_failed', plus: every('P3M') }],
        resets: BOAT_SAFETY.renewedBy,
      },
    ],
    checks: [],
  },
  {
    id: 'ukpilot',
    scheme: 'historic',
    weight: 'common_practice',
    kinds: ['workboat_certificate'],
    inWords: 'A pilot boat was surveyed every four years. Superseded; kept as an example.',
    source: {
      publication: 'SI 1991/65',
      clause: 'reg 5',
      address: 'http://www.legislation.gov.uk/uksi/1991/65/regulation/5/made/data.xht',
      status: 'read',
    },
    duties: [
      {
        id: 'survey',
        action: { kind: 'inspect', words: 'Have the pilot boat surveyed' },
        inWords: 'A pilot boat was surveyed every 4 years',
        limits: [sinceLastDone(every('P4Y'))],
        resets: [surveyed('initial_survey', SURVEYOR), surveyed('renewal_survey', SURVEYOR)],
      },
    ],
    checks: [],
  },
];
