/** United States rules for the lifesaving equipment of inspected vessels as a whole. */
import type { ItemKindId } from '../../item/item-kind.ts';
import type { Duty, Rule } from '../rule.ts';
import { every, sinceLastDone } from './shapes.ts';

const CRAFT: readonly ItemKindId[] = ['liferaft', 'rescue_boat'];
const BATTERIES: readonly ItemKindId[] = [
  'epirb',
  'search_and_rescue_transponder',
  'lifebuoy_light',
  'survival_equipment_battery',
];
const DATED: readonly ItemKindId[] = [
  'hand_flare',
  'parachute_rocket_flare',
  'buoyant_smoke',
  'hydrostatic_release_disposable',
  'lifejacket_firing_head',
];
const LIFESAVING: readonly ItemKindId[] = [
  ...CRAFT,
  'launching_appliance',
  'inflatable_lifejacket',
  'foam_lifejacket',
  'hydrostatic_release_serviceable',
  ...DATED,
  ...BATTERIES,
];

const REPLACED_AT_INSPECTION: Pick<Duty, 'expires' | 'replaceBy' | 'limits' | 'resets'> = {
  limits: [{ kind: 'printed' }],
  expires: true,
  replaceBy: { kind: 'first_event_after_expiry', event: 'inspection' },
  resets: [{ act: 'replaced', by: [] }],
};

/** What runs out between two inspections is out of date, and must be replaced at the next. */
const DATED_DUTIES: readonly Duty[] = [
  {
    ...REPLACED_AT_INSPECTION,
    id: 'dated',
    action: { kind: 'replace', words: 'Replace what is out of date' },
    inWords: 'What bears a date is replaced at the first annual inspection after it',
    onlyFor: DATED,
  },
  {
    ...REPLACED_AT_INSPECTION,
    id: 'battery',
    action: { kind: 'replace', words: 'Replace the battery' },
    inWords: 'A dated battery is replaced at the first annual inspection after its date, an undated one at each',
    onlyFor: BATTERIES,
    limits: [{ kind: 'printed', renewedBy: 'battery' }],
    resets: [
      { act: 'serviced', tests: ['battery'], by: [] },
      { act: 'replaced', by: [] },
    ],
    fallback: [{ kind: 'next_event', event: 'inspection' }],
  },
];

export const US_LIFESAVING_RULES: readonly Rule[] = [
  {
    id: 'us-lsa-ann',
    scheme: 'us_offshore_supply',
    weight: 'law',
    kinds: [...DATED, ...BATTERIES],
    inWords:
      'At each annual inspection survival equipment whose date has passed is replaced, and every battery without a date. What runs out between two inspections is out of date from that day on.',
    source: {
      publication: '46 CFR',
      clause: '131.575(c)-(e)',
      address: 'https://law.lawstack.com/cfr/46/131.575/',
      status: 'read',
    },
    duties: DATED_DUTIES,
    checks: [],
  },
  {
    id: 'us-lsa-annK',
    scheme: 'us_small_passenger',
    weight: 'law',
    kinds: LIFESAVING,
    inWords:
      "Lifesaving equipment is inspected every year; what is past its date is replaced at the annual inspection, and every battery without a date. A date may be proved by the maker's record against the serial number.",
    source: {
      publication: '46 CFR',
      clause: '122.726(c)-(e)',
      address: 'https://www.ecfr.gov/cgi-bin/text-idx?mc=true&node=se46.4.122_1726&rgn=div8',
      status: 'read',
      fromMemory: 'the number of the like section in subchapter T, 185.726',
    },
    duties: [
      {
        id: 'inspection',
        action: { kind: 'inspect', words: 'Inspect the lifesaving equipment and replace what is out of date' },
        inWords: 'Lifesaving equipment is inspected every year',
        limits: [sinceLastDone(every('P1Y'))],
        resets: [
          { act: 'inspected', tests: ['examination'], by: [] },
          { act: 'serviced', by: [] },
        ],
      },
      ...DATED_DUTIES,
    ],
    checks: [],
  },
  {
    id: 'us-lsa-month',
    scheme: 'us_small_passenger',
    weight: 'law',
    kinds: [...CRAFT, 'launching_appliance'],
    inWords:
      "Each survival craft, rescue boat and launching appliance is inspected every month by the maker's checklist. It is counted here from day to day.",
    source: {
      publication: '46 CFR',
      clause: '185.722',
      address: 'https://lexbuild.dev/ecfr/title-46/chapter-I/part-185/section-185.722',
      status: 'read',
    },
    duties: [
      {
        id: 'inspection',
        action: { kind: 'inspect', words: "Inspect it by the maker's checklist" },
        inWords: 'Each survival craft, rescue boat and launching appliance is inspected every month',
        limits: [sinceLastDone(every('P1M'))],
        resets: [{ act: 'inspected', tests: ['examination', 'onboard_check'], by: [] }],
      },
    ],
    checks: [],
  },
  {
    id: 'us-lsa-wk',
    scheme: 'us_small_passenger',
    weight: 'law',
    kinds: [...CRAFT, 'launching_appliance'],
    inWords:
      'Each survival craft, rescue boat and launching appliance is looked at every week; the engine of a rescue boat is run for three minutes and its battery charged.',
    source: {
      publication: '46 CFR',
      clause: '185.720',
      address: 'https://law.lawstack.com/cfr/46/185.720/',
      status: 'read',
    },
    duties: [
      {
        id: 'visual',
        action: { kind: 'inspect', words: 'Look whether it is ready for use' },
        inWords: 'Each survival craft, rescue boat and launching appliance is looked at every week',
        limits: [sinceLastDone(every('P1W'))],
        resets: [{ act: 'inspected', by: [] }],
      },
      {
        id: 'engine_run',
        action: { kind: 'test', words: "Run the rescue boat's engine for 3 minutes and charge its battery" },
        inWords: 'The engine of a rescue boat is run for 3 minutes every week',
        onlyFor: ['rescue_boat'],
        limits: [sinceLastDone(every('P1W'))],
        resets: [{ act: 'tested', tests: ['function', 'full_function'], by: [] }],
      },
    ],
    checks: [],
  },
];
