import type { ItemKindId } from '../../item/item-kind.ts';
import type { Duty, Rule } from '../rule.ts';

const FLARES: readonly ItemKindId[] = ['hand_flare', 'parachute_rocket_flare', 'buoyant_smoke'];

const REPLACE: Pick<Duty, 'id' | 'action' | 'expires' | 'resets'> = {
  id: 'replacement',
  action: { kind: 'replace', words: 'Replace the signal' },
  expires: true,
  resets: [{ act: 'replaced', by: [] }],
};

export const FLARE_RULES: readonly Rule[] = [
  {
    id: 'pyro-us-rec',
    scheme: 'us_recreational',
    weight: 'law',
    kinds: FLARES,
    inWords: 'A distress signal does not count as carried once the service life marked on it has passed.',
    source: {
      publication: '33 CFR',
      clause: '175.125',
      address: 'https://lexbuild.dev/ecfr/title-33/chapter-I/part-175/section-175.125',
      status: 'read',
    },
    alsoAsks: ['It must also be in serviceable condition.'],
    duties: [
      {
        ...REPLACE,
        inWords: 'A distress signal counts only until the service life marked on it has passed',
        limits: [{ kind: 'printed' }],
      },
    ],
    checks: [],
  },
  {
    id: 'pyro-us-mfr',
    scheme: 'us_recreational',
    weight: 'law',
    kinds: ['hand_flare', 'parachute_rocket_flare'],
    inWords: 'The expiry stamped on an approved red flare is not later than 42 months after its month of manufacture.',
    source: {
      publication: '46 CFR',
      clause: '160.036-5(b); 160.024-5(b)',
      address: 'https://codes.findlaw.com/cfr/title-46-shipping/cfr-sect-46-160-036-5/',
      status: 'read',
      fromMemory: 'that the same holds in subparts 160.021, .022, .037 and .066',
    },
    duties: [],
    checks: [
      {
        kind: 'stamp_not_after',
        from: 'manufactured',
        plus: 'P42M',
        inWords:
          'a flare approved in the United States is stamped to expire no later than 42 months after its month of manufacture',
      },
    ],
  },
  {
    id: 'pyro-us-school',
    scheme: 'us_sailing_school',
    weight: 'law',
    kinds: FLARES,
    inWords:
      'A distress signal expires on the date stamped on it, and is replaced no later than the first inspection for certification or reinspection after that.',
    source: {
      publication: '46 CFR',
      clause: '169.553(b)',
      address: 'https://lexbuild.dev/ecfr/title-46/chapter-I/part-169/section-169.553',
      status: 'read',
    },
    duties: [
      {
        ...REPLACE,
        inWords: 'A distress signal is replaced no later than the first inspection after the date stamped on it',
        limits: [{ kind: 'printed' }],
        replaceBy: { kind: 'first_event_after_expiry', event: 'inspection' },
      },
    ],
    checks: [],
  },
  {
    id: 'pyro-solas',
    scheme: 'solas',
    weight: 'law',
    kinds: FLARES,
    inWords:
      'A distress signal is made to stay serviceable for at least three years; the expiry stamped on it governs.',
    source: {
      publication: 'UK SI 1992/2359',
      clause: 'Sch. 8 Part I 1.1.7',
      address: 'http://www.legislation.gov.uk/cy/uksi/1992/2359/schedule/8/made/data.xht?view=snippet&wrap=true',
      status: 'read',
    },
    duties: [
      {
        ...REPLACE,
        inWords: 'A distress signal is good until the expiry stamped on it',
        limits: [{ kind: 'printed' }],
      },
    ],
    checks: [],
  },
  {
    id: 'pyro-osr',
    scheme: 'offshore_racing',
    weight: 'certificate',
    kinds: FLARES,
    inWords: 'Pyrotechnics are not past the expiry stamped on them; without a stamp, four years from manufacture.',
    source: {
      publication: 'World Sailing OSR',
      clause: '4.23 (edition-dependent)',
      address: null,
      status: 'memory',
    },
    duties: [
      {
        ...REPLACE,
        inWords:
          'A distress signal is good until the expiry stamped on it, or without one for 4 years from manufacture',
        limits: [{ kind: 'printed' }],
        fallback: [{ kind: 'after', from: 'manufactured', plus: { kind: 'fixed', period: 'P4Y' } }],
      },
    ],
    checks: [],
  },
  {
    id: 'pyro-ca',
    scheme: 'canada_lifesaving',
    weight: 'law',
    kinds: FLARES,
    inWords: 'A pyrotechnic distress signal is good for four years from its month of manufacture.',
    source: {
      publication: 'Small Vessel Regulations SOR/2010-91',
      clause: null,
      address: null,
      status: 'memory',
    },
    duties: [
      {
        ...REPLACE,
        inWords: 'A distress signal is good for 4 years from its month of manufacture',
        limits: [
          { kind: 'after', from: 'manufactured', plus: { kind: 'fixed', period: 'P4Y' }, counting: 'whole_months' },
        ],
      },
    ],
    checks: [],
  },
  {
    id: 'pyro-qld',
    scheme: 'historic',
    weight: 'common_practice',
    kinds: [
      ...FLARES,
      'liferaft',
      'portable_extinguisher_dry_powder',
      'portable_extinguisher_dry_powder_disposable',
      'portable_extinguisher_co2',
      'portable_extinguisher_foam',
      'portable_extinguisher_water',
      'portable_extinguisher_wet_chemical',
      'epirb',
      'inflatable_lifejacket',
    ],
    inWords:
      'Safety equipment shows a legible expiry date and is serviced or replaced before it. With the date passed or illegible the vessel was taken as not equipped. Superseded.',
    source: {
      publication: 'Transport Operations (Marine Safety) Reg 2004',
      clause: 's 41',
      address: 'https://ausfish.com/vforum/showthread.php/156807-flare-expiry-date?p=1090496&viewfull=1',
      status: 'second_hand',
    },
    alsoAsks: ['Without a legible date the thing was treated as not carried.'],
    duties: [
      {
        ...REPLACE,
        action: { kind: 'replace', words: 'Have it serviced by the maker or agent, or replace it' },
        inWords: 'Safety equipment counted as carried only until the legible expiry date on it',
        limits: [{ kind: 'printed' }],
      },
    ],
    checks: [],
  },
  {
    id: 'evds',
    scheme: 'us_recreational',
    weight: 'common_practice',
    kinds: ['electronic_visual_distress_signal'],
    inWords:
      "An electronic distress signal gets a new battery every year: seen in a vendor's note only; the standard's text is from memory.",
    source: { publication: '46 CFR', clause: '161.013 / vendor note', address: null, status: 'memory' },
    duties: [
      {
        id: 'battery',
        action: { kind: 'service', words: 'Put in a new battery' },
        inWords: 'An electronic distress signal gets a new battery every year',
        limits: [{ kind: 'after', from: 'last_done', plus: { kind: 'fixed', period: 'P1Y' } }],
        resets: [{ act: 'serviced', by: [] }],
      },
    ],
    checks: [],
  },
];
