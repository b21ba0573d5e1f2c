import type { Interval, Rule, Source } from '../rule.ts';
import {
  CO2,
  COMPETENT,
  DISPOSABLE,
  DRY_POWDER,
  hydrostaticBy,
  LIQUID,
  PORTABLE,
  REFILLABLE,
  sinceMade,
  TECHNICIAN,
} from './extinguisher-shapes.ts';
import { every, sinceLastDone } from './shapes.ts';

const NFPA_TABLES: Pick<Source, 'address' | 'status'> = {
  address: 'https://serviceextinguisher.com/index.php/about/',
  status: 'second_hand',
};

const INTERNAL: Interval = {
  kind: 'by_condition',
  options: [
    {
      period: 'P6Y',
      all: [
        { kind: 'kind_is', kinds: DRY_POWDER },
        { kind: 'attribute_is', attribute: 'pressure', value: 'stored_pressure' },
        { kind: 'attribute_is', attribute: 'cylinderMaterial', value: 'mild_steel' },
      ],
    },
    { period: 'P5Y', all: [{ kind: 'kind_is', kinds: CO2 }] },
    {
      period: 'P5Y',
      all: [
        { kind: 'kind_is', kinds: LIQUID },
        { kind: 'attribute_is', attribute: 'pressure', value: 'stored_pressure' },
      ],
    },
    {
      period: 'P5Y',
      all: [
        { kind: 'kind_is', kinds: DRY_POWDER },
        { kind: 'attribute_is', attribute: 'pressure', value: 'stored_pressure' },
        { kind: 'attribute_is', attribute: 'cylinderMaterial', value: 'stainless_steel' },
      ],
    },
    { period: 'P1Y', all: [] },
  ],
};

const HYDROSTATIC: Interval = {
  kind: 'by_condition',
  options: [
    { period: 'P12Y', all: [{ kind: 'kind_is', kinds: DRY_POWDER }] },
    { period: 'P5Y', all: [], fromMemory: true },
  ],
};

export const EXTINGUISHER_STANDARD_RULES: readonly Rule[] = [
  {
    id: 'fe-bs-insp',
    scheme: 'bs5306',
    weight: 'common_practice',
    kinds: PORTABLE,
    inWords:
      'A portable extinguisher is looked at every month by the person responsible, serviced every year by a competent person, given an extended service every five years (carbon dioxide: overhauled every ten) and taken out of use at twenty.',
    source: {
      publication: 'BS 5306-3:2009 (2017 edition exists)',
      clause: 'maintenance overview',
      address: 'http://forum.iosh.co.uk/posts/t93698findlastpost-Fire-Extinguishers-Maintenanceand-Servicing',
      status: 'second_hand',
      fromMemory: 'the ten years for carbon dioxide',
    },
    duties: [
      {
        id: 'visual',
        action: { kind: 'inspect', words: 'Look at the extinguisher: gauge, pin, hose, place' },
        inWords: 'A portable extinguisher is looked at every month',
        limits: [sinceLastDone(every('P1M'))],
        resets: [
          { act: 'inspected', by: [] },
          { act: 'serviced', by: [] },
        ],
      },
      {
        id: 'service',
        action: { kind: 'service', words: 'Have the extinguisher serviced by a competent person' },
        inWords: 'A portable extinguisher has a basic service every year',
        limits: [sinceLastDone(every('P1Y'))],
        resets: [
          { act: 'serviced', by: COMPETENT },
          { act: 'overhauled', by: COMPETENT },
        ],
      },
      {
        id: 'extended_service',
        action: { kind: 'service', words: 'Have the extended service done by a competent person' },
        inWords: 'A portable extinguisher, other than carbon dioxide, has an extended service every 5 years',
        onlyFor: [...DRY_POWDER, ...LIQUID],
        limits: [sinceLastDone(every('P5Y'))],
        fallback: [sinceMade(every('P5Y'), 'extended service')],
        resets: [
          { act: 'serviced', tests: ['extended_service'], by: COMPETENT },
          { act: 'overhauled', by: COMPETENT },
        ],
      },
      {
        id: 'overhaul',
        action: { kind: 'overhaul', words: 'Have the extinguisher overhauled' },
        inWords: 'A carbon dioxide extinguisher is overhauled every 10 years',
        onlyFor: CO2,
        limits: [{ kind: 'after', from: 'last_done', plus: every('P10Y'), fromMemory: true }],
        fallback: [{ ...sinceMade(every('P10Y'), 'overhaul'), fromMemory: true }],
        resets: [{ act: 'overhauled', by: COMPETENT }],
      },
      {
        id: 'withdrawal',
        action: { kind: 'withdraw', words: 'Take the extinguisher out of use' },
        inWords: 'A portable extinguisher is not kept beyond 20 years from manufacture',
        limits: [{ kind: 'after', from: 'manufactured', plus: every('P20Y') }],
        resets: [{ act: 'replaced', by: [] }],
      },
    ],
    checks: [],
  },
  {
    id: 'fe-nfpa',
    scheme: 'nfpa10',
    weight: 'common_practice',
    kinds: PORTABLE,
    inWords:
      'A portable extinguisher is looked at every month from its first placing, maintained every year, and examined inside every six years (dry chemical, stored pressure, mild steel), five (carbon dioxide, water, foam, wet chemical, stainless steel) or one (cartridge). A disposable one is taken out of use twelve years from manufacture.',
    source: {
      publication: 'NFPA 10 (2007 table via trade page)',
      clause: 'internal examination table',
      ...NFPA_TABLES,
    },
    duties: [
      {
        id: 'visual',
        action: { kind: 'inspect', words: 'Look at the extinguisher: gauge, pin, hose, place' },
        inWords: 'A portable extinguisher is looked at every month from its first placing',
        limits: [sinceLastDone(every('P1M'))],
        fallback: [{ kind: 'after', from: 'installed', plus: every('P1M') }],
        resets: [
          { act: 'inspected', by: [] },
          { act: 'serviced', by: [] },
        ],
      },
      {
        id: 'service',
        action: { kind: 'service', words: 'Have the extinguisher maintained by a certified technician' },
        inWords: 'A portable extinguisher is maintained every year by a certified technician',
        limits: [sinceLastDone(every('P1Y'))],
        resets: [{ act: 'serviced', by: TECHNICIAN }],
      },
      {
        id: 'internal_examination',
        action: { kind: 'inspect', words: 'Have the extinguisher examined inside by a certified technician' },
        inWords:
          'A portable extinguisher is examined inside every 6, 5 or 1 years by its type, from new or from its last hydrostatic test',
        onlyFor: REFILLABLE,
        limits: [sinceLastDone(INTERNAL)],
        fallback: [{ kind: 'after', from: 'manufactured', plus: INTERNAL }],
        resets: [
          { act: 'inspected', tests: ['internal_examination'], by: TECHNICIAN },
          { act: 'tested', tests: ['internal_examination'], by: TECHNICIAN },
          { act: 'serviced', tests: ['internal_examination'], by: TECHNICIAN },
          ...hydrostaticBy(TECHNICIAN),
        ],
      },
      {
        id: 'withdrawal',
        action: { kind: 'withdraw', words: 'Take the disposable extinguisher out of use' },
        inWords: 'A disposable extinguisher is taken out of use 12 years from manufacture',
        onlyFor: DISPOSABLE,
        limits: [{ kind: 'after', from: 'manufactured', plus: every('P12Y') }],
        resets: [{ act: 'replaced', by: [] }],
      },
    ],
    checks: [],
  },
  {
    id: 'fe-hydro-nfpa',
    scheme: 'nfpa10',
    weight: 'common_practice',
    kinds: REFILLABLE,
    inWords:
      'A dry-chemical extinguisher is hydrostatically tested every twelve years; carbon dioxide, water, foam and wet chemical every five (from memory).',
    source: {
      publication: 'NFPA 10',
      clause: 'hydrostatic table',
      ...NFPA_TABLES,
      fromMemory: 'the five years for other agents than dry chemical',
    },
    duties: [
      {
        id: 'hydrostatic_test',
        action: { kind: 'test', words: 'Have the extinguisher hydrostatically tested at a certified facility' },
        inWords: 'An extinguisher is hydrostatically tested every 12 years if dry chemical, every 5 years otherwise',
        limits: [sinceLastDone(HYDROSTATIC)],
        fallback: [{ kind: 'after', from: 'manufactured', plus: HYDROSTATIC }],
        resets: hydrostaticBy(TECHNICIAN),
      },
    ],
    checks: [],
  },
];
