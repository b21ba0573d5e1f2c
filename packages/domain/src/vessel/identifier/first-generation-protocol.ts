/**
 * What the rest of a 15-character beacon id says, by its protocol: who the beacon belongs to.
 *
 * The location protocol with MMSI and the maritime user protocol: Cospas-Sarsat beacon coding guide, read. The return
 * link with MMSI, the radio call sign and the names of the other protocols: second-hand, from the decoder that the
 * Australian Maritime Safety Authority publishes. Bits are numbered as in the transmitted message.
 */
import { type Bits, readBaudot } from './beacon-bits.ts';

export type ProtocolKind =
  | 'location_with_mmsi'
  | 'return_link_with_mmsi'
  | 'maritime_user'
  | 'radio_call_sign_user'
  /** Carries no MMSI or call sign that we read. */
  | 'other';

export type Protocol = {
  readonly protocol: ProtocolKind;
  readonly flag: 'location' | 'user';
  /** Four bits of a location protocol, three of a user protocol. */
  readonly code: string;
  readonly mmsi: string | null;
  readonly callSign: string | null;
  /** The number that tells several beacons of one vessel apart, as written. */
  readonly beacon: string | null;
  /** Bits 84 and 85 as they stand, where a user protocol has them: which auxiliary radio-locating device it has. */
  readonly homing: string | null;
  /** What kind of protocol it is, to stand after "coded as"; `null` where we do not know the code. */
  readonly inWords: string | null;
  readonly doubts: readonly string[];
};

const NOBODY = { mmsi: null, callSign: null, beacon: null, homing: null };

export function readProtocol(bits: Bits, mid: number): Protocol {
  return bits.text(26, 26) === '0' ? locationProtocol(bits, mid) : userProtocol(bits, mid);
}

function locationProtocol(bits: Bits, mid: number): Protocol {
  const code = bits.text(37, 40);
  const shape = { ...NOBODY, flag: 'location', code } as const;
  if (code === '0010') {
    const [mmsi, doubts] = binaryMmsi(bits.number(41, 60), mid);
    const beacon = String(bits.number(61, 64));
    return { ...shape, protocol: 'location_with_mmsi', mmsi, beacon, inWords: 'an EPIRB with MMSI', doubts };
  }
  if (code === '1101' && bits.text(43, 46) === '1111') {
    const [mmsi, doubts] = binaryMmsi(bits.number(47, 66), mid);
    const beacon = String(bits.number(41, 42));
    const inWords = 'an EPIRB with MMSI and return link';
    return { ...shape, protocol: 'return_link_with_mmsi', mmsi, beacon, inWords, doubts };
  }
  return { ...shape, protocol: 'other', inWords: LOCATION_WORDS[code] ?? null, doubts: [] };
}

function binaryMmsi(tail: number, mid: number): [string | null, string[]] {
  if (tail <= 999_999) return [`${mid}${String(tail).padStart(6, '0')}`, []];
  return [null, [`Where the last six digits of the MMSI belong it reads ${tail}, which has seven.`]];
}

function userProtocol(bits: Bits, mid: number): Protocol {
  const code = bits.text(37, 39);
  const inWords = userWords(code, bits.text(40, 42));
  const shape = { ...NOBODY, flag: 'user', code, inWords, doubts: userDoubts(code) } as const;
  if (code !== '010' && code !== '110') return { ...shape, protocol: 'other' };
  const protocol = code === '010' ? 'maritime_user' : 'radio_call_sign_user';
  const ident = code === '010' ? readBaudot(bits.text(40, 75)) : radioCallSign(bits);
  const beacon = readBaudot(bits.text(76, 81));
  const homing = bits.text(84, 85);
  const doubts = `${ident}${beacon}`.includes('?') ? ['Some of its characters are in no code that we know.'] : [];
  const whose = /^\d{6}$/.test(ident) ? { mmsi: `${mid}${ident}` } : { callSign: ident.trim() || null };
  return { ...shape, ...whose, protocol, beacon, homing, doubts };
}

/** Four characters of six bits, then three digits of four bits; ten stands for a space. */
function radioCallSign(bits: Bits): string {
  const digits = [64, 68, 72].map((from) => '0123456789 '.charAt(bits.number(from, from + 3)) || '?');
  return readBaudot(bits.text(40, 63)) + digits.join('');
}

function userDoubts(code: string): string[] {
  return code === '101' ? ['A second-generation id begins so: is this the first 15 of its 23 characters?'] : [];
}

const LOCATION_WORDS: Readonly<Record<string, string>> = {
  '0110': 'an EPIRB with a serial number',
  '0111': 'a personal beacon with a serial number',
  '1010': 'an EPIRB by national rules',
  '1011': 'a personal beacon by national rules',
  '1100': 'a ship security alert',
  '1101': 'a beacon with return link',
  '1110': 'a test',
};

const SERIAL_WORDS: Readonly<Record<string, string>> = {
  '010': 'a float-free EPIRB with a serial number',
  '100': 'an EPIRB, not float-free, with a serial number',
  '110': 'a personal beacon with a serial number',
};

const USER_WORDS: Readonly<Record<string, string>> = {
  '010': 'an EPIRB by the maritime user protocol',
  '100': 'a beacon by national rules',
  '110': 'an EPIRB with radio call sign',
  '111': 'a test',
};

function userWords(code: string, serialType: string): string | null {
  return (code === '011' ? SERIAL_WORDS[serialType] : USER_WORDS[code]) ?? null;
}
