/** Each of a vessel's identifiers as it is written, and what it says. */
import type { components } from '@garboard/client/generated/api.d.ts';

type Vessel = components['schemas']['Vessel'];
export type IdentifierWords = { name: string; written: string; words: string };

/** The order in which the API tells them. */
const IN_ORDER = ['hin', 'imo', 'mmsi', 'callSign', 'officialNumber'] as const;

export function identifierWords({ identifiers, identifierNotes }: Pick<Vessel, 'identifiers' | 'identifierNotes'>) {
  const written = IN_ORDER.flatMap((each) => identifiers?.[each] ?? []);
  return (identifierNotes?.inWords ?? []).map((sentence, place) => told(sentence, written[place] ?? ''));
}

/** "MMSI: 232123456, a ship station." — the name, and what is left when the number itself has been told. */
function told(sentence: string, written: string): IdentifierWords {
  const [, name = '', words = sentence] = /^([^:]+): (.+)$/s.exec(sentence) ?? [];
  const repeated = words.startsWith(written) && /^,? /.test(words.slice(written.length));
  return { name, written, words: repeated ? words.slice(written.length).replace(/^,? /, '') : words };
}
