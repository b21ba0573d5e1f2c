/** Rules that date nothing themselves: what they say holds for the obligations of other rules. */
import type { ItemKindId } from '../../item/item-kind.ts';
import type { Rule } from '../rule.ts';

/** What a life may hang on: gear that is carried for the day it is needed. */
const SAFETY_GEAR: readonly ItemKindId[] = [
  'hand_flare',
  'parachute_rocket_flare',
  'buoyant_smoke',
  'electronic_visual_distress_signal',
  'liferaft',
  'liferaft_packed_contents',
  'portable_extinguisher_dry_powder',
  'portable_extinguisher_dry_powder_disposable',
  'portable_extinguisher_co2',
  'portable_extinguisher_foam',
  'portable_extinguisher_water',
  'portable_extinguisher_wet_chemical',
  'engine_space_extinguisher',
  'fixed_co2_system',
  'fire_blanket',
  'epirb',
  'search_and_rescue_transponder',
  'personal_locator_beacon',
  'hydrostatic_release_serviceable',
  'hydrostatic_release_disposable',
  'inflatable_lifejacket',
  'foam_lifejacket',
  'lifejacket_firing_head',
  'lifejacket_gas_cylinder',
  'gas_detector',
  'carbon_monoxide_alarm',
  'man_overboard_recovery_gear',
  'throwing_line',
  'danbuoy',
  'lifebuoy_light',
  'safety_harness',
  'webbing_jackstay',
  'survival_equipment_battery',
];

export const WHOLE_SCHEME_RULES: readonly Rule[] = [
  {
    id: 'unknown',
    scheme: 'common_practice',
    weight: 'common_practice',
    kinds: SAFETY_GEAR,
    inWords:
      'A piece of safety gear without a date counts as not carried until there is dated evidence. The superseded text behind it said so of gear whose expiry was passed or could not be read; for any other missing date it is our reading.',
    source: {
      publication: 'Queensland s 41 (historic)',
      clause: 's 41(2),(4)',
      address: 'https://ausfish.com/vforum/showthread.php/156807-flare-expiry-date?p=1090496&viewfull=1',
      status: 'second_hand',
    },
    duties: [],
    checks: [
      {
        kind: 'no_date',
        inWords: 'count it as not carried until there is dated evidence',
      },
    ],
  },
  {
    id: 'us-laidup',
    scheme: 'us_sailing_school',
    weight: 'law',
    kinds: [],
    inWords:
      'The rules for sailing school vessels do not apply to one that is laid up, dismantled and out of service. Here the clocks run on: every duty under those rules is suspended from the day she is laid up and dismantled, and must be done before she returns to service. That she is out of service is taken to follow from being laid up. Nothing under any other rule is suspended.',
    source: {
      publication: '46 CFR',
      clause: '169.103(b)(2)',
      address: 'http://cclme.org/collection/1-46CFR169.txt',
      status: 'read',
    },
    duties: [],
    checks: [],
    suspends: {
      use: 'laid_up',
      dismantled: true,
      inWords: 'while she is laid up, dismantled and out of service (46 CFR 169.103(b)(2))',
    },
  },
];
