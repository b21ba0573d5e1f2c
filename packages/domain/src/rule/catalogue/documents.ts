import type { Duty, Rule } from '../rule.ts';
import { every, NO_SOURCE, sinceLastDone } from './shapes.ts';

const RENEWAL: Pick<Duty, 'id' | 'limits' | 'expires' | 'resets'> = {
  id: 'renewal',
  limits: [{ kind: 'printed' }],
  expires: true,
  resets: [{ act: 'replaced', by: [] }],
};

export const DOCUMENT_RULES: readonly Rule[] = [
  {
    id: 'insur',
    scheme: 'common_practice',
    weight: 'common_practice',
    kinds: ['insurance_policy'],
    inWords:
      'A policy covers the boat until the day written in it, usually a year on. After that day she is not insured: there is no grace.',
    source: NO_SOURCE,
    duties: [
      {
        ...RENEWAL,
        action: { kind: 'replace', words: 'Renew the insurance policy' },
        inWords: 'A policy covers the boat until the day written in it',
      },
    ],
    checks: [],
  },
  {
    id: 'us-doc',
    scheme: 'us_documentation',
    weight: 'law',
    kinds: ['certificate_of_documentation'],
    inWords:
      'The endorsement on a certificate of documentation is good until the day written on it: one year, or for a recreational vessel one to five as the owner chose.',
    source: {
      publication: '46 CFR',
      clause: '67.317(a)',
      address: 'https://checkoutapi.com/regulations/title46_chapterI-i1_part67_subpartU_section67.317',
      status: 'read',
    },
    duties: [
      {
        ...RENEWAL,
        action: { kind: 'replace', words: 'Renew the endorsement on the certificate of documentation' },
        inWords: 'The endorsement on a certificate of documentation is good until the day written on it',
      },
    ],
    checks: [],
  },
  {
    id: 'tonnage',
    scheme: 'common_practice',
    weight: 'common_practice',
    kinds: ['tonnage_certificate'],
    inWords:
      'A measurement of tonnage or length does not run out. A change of the structure voids it: then she is measured anew.',
    source: NO_SOURCE,
    duties: [
      {
        id: 'measurement',
        action: { kind: 'inspect', words: 'Have a measurement surveyor measure her anew' },
        inWords: 'A measurement of tonnage or length is good until the structure is changed',
        limits: [{ kind: 'triggered', events: ['alteration'], facts: [] }],
        resets: [
          { act: 'inspected', by: ['measurement_surveyor'] },
          { act: 'replaced', by: [] },
        ],
      },
    ],
    checks: [],
  },
  {
    id: 'cert-mgn280',
    scheme: 'uk_small_commercial',
    weight: 'certificate',
    kinds: ['small_commercial_certificate'],
    inWords:
      'A certificate under the earlier code runs no longer than five years from the examination out of the water, and no longer than the day written on it. The code is superseded; vessels in transition may still be under it.',
    source: {
      publication: 'MGN 280',
      clause: '27.3.3',
      address: 'https://www.imorules.com/GUID-6CD1665E-16CD-4F78-8CE9-FEEE116B9BFC.html',
      status: 'read',
      fromMemory:
        'that its annual and mid-term examinations have windows of three months either way; they are not counted',
    },
    alsoAsks: [
      'Annual and mid-term examinations, within three months either way (from memory), are not worked out here.',
    ],
    duties: [
      {
        id: 'out_of_water',
        action: { kind: 'inspect', words: 'Have an authorised person examine her out of the water' },
        inWords:
          'A certificate under the earlier code runs no longer than 5 years from the examination out of the water, and no longer than the day written on it',
        limits: [sinceLastDone(every('P5Y')), { kind: 'printed' }],
        expires: true,
        resets: [{ act: 'inspected', tests: ['out_of_water'], by: ['surveyor', 'marine_inspector'] }],
      },
    ],
    checks: [],
  },
  {
    id: 'damage-mgn280',
    scheme: 'uk_small_commercial',
    weight: 'certificate',
    kinds: ['small_commercial_certificate'],
    inWords:
      'Major damage, as by a collision, a grounding or a fire, is notified at once to the certifying authority, and its repair is approved by it. Every such event on record counts as one that may have done major damage until somebody of the authority has looked.',
    source: {
      publication: 'MGN 280',
      clause: '27.7.3',
      address: 'https://www.imorules.com/GUID-3A40B702-0344-4F1C-BFCE-468E13324750.html',
      status: 'read',
    },
    alsoAsks: [
      'What is major damage is for the certifying authority to say: where it says that nothing need be done, record its look as the inspection.',
    ],
    duties: [
      {
        id: 'damage_notice',
        action: { kind: 'inspect', words: 'Notify the certifying authority at once, and have the repair approved' },
        inWords: 'Damage by collision, grounding or fire is notified at once, and its repair approved',
        limits: [{ kind: 'triggered', events: ['grounding', 'collision', 'fire'], facts: [] }],
        resets: [{ act: 'inspected', by: ['surveyor', 'marine_inspector'] }],
      },
    ],
    checks: [],
  },
];
