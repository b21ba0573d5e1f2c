/** The school's list. Invented, like everything else here. */
import type { SchemeId } from '@garboard/domain/rule/scheme.ts';
import type { Boat } from './boat.ts';

const HERS = { material: 'GRP', homePort: 'Saltern Reach', schemes: [] } as const;

const dinghy = (name: string, ageYears: number): Boat => ({
  ...HERS,
  name,
  type: 'training dinghy',
  carries: 'dinghy',
  ageYears,
  lengthM: 4.2,
  rig: 'Bermudan sloop',
  persons: 4,
});

const fastDinghy = (name: string, ageYears: number): Boat => ({
  ...dinghy(name, ageYears),
  type: 'two-handed dinghy',
  carries: 'trapezeDinghy',
  lengthM: 4.7,
  persons: 2,
});

const keelboat = (name: string, ageYears: number): Boat => ({
  ...HERS,
  name,
  type: 'small keelboat',
  carries: 'keelboat',
  ageYears,
  lengthM: 6.4,
  rig: 'fractional sloop',
  schemes: ['offshore_racing'],
  persons: 5,
});

const safetyBoat = (name: string, ageYears: number): Boat => ({
  ...HERS,
  name,
  type: 'rigid inflatable',
  carries: 'safetyBoat',
  ageYears,
  lengthM: 5.5,
  material: 'GRP with tubes',
  rig: null,
  schemes: ['uk_small_commercial', 'solas'],
  persons: 6,
});

/** `signals`: whose rules her flares are kept by. */
const yacht = (name: string, ageYears: number, lengthM: number, signals: SchemeId): Boat => ({
  ...HERS,
  name,
  type: 'cruising yacht',
  carries: 'cruisingYacht',
  ageYears,
  lengthM,
  rig: 'masthead sloop',
  schemes: ['uk_small_commercial', 'bs5306', 'insurer', signals],
  persons: 8,
});

export const SCHOOL_BOATS: readonly Boat[] = [
  dinghy('Bowline', 3),
  dinghy('Clove Hitch', 3),
  dinghy('Reef Knot', 3),
  dinghy('Sheet Bend', 7),
  dinghy('Rolling Hitch', 7),
  dinghy('Sheepshank', 7),
  dinghy('Carrick Bend', 12),
  dinghy('Half Hitch', 12),
  dinghy('Granny', 19),
  fastDinghy('Marlinspike', 5),
  fastDinghy('Fid', 5),
  fastDinghy('Serving Mallet', 9),
  fastDinghy('Turk’s Head', 9),
  fastDinghy('Monkey’s Fist', 14),
  keelboat('Ebb', 8),
  keelboat('Flood', 8),
  keelboat('Neap', 11),
  keelboat('Slack Water', 11),
  keelboat('Overfall', 16),
  keelboat('Back Eddy', 16),
  keelboat('Spring Tide', 22),
  safetyBoat('Collie', 6),
  safetyBoat('Drover', 9),
  safetyBoat('Shepherd', 15),
  yacht('Plain Sailing', 11, 10.3, 'solas'),
  yacht('Second Helping', 18, 11.1, 'solas'),
  yacht('Long Division', 26, 11.9, 'offshore_racing'),
];
