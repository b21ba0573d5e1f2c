/** A rule's source, with how far the figure was checked. */
import type { components } from '@garboard/client/generated/api.d.ts';

type Source = components['schemas']['Source'];

export const statusWords: Record<Source['status'], string> = {
  read: 'read in the text',
  second_hand: 'quoted from another source',
  memory: 'from memory',
  common_practice: 'common practice, no source',
};

/** "SOLAS III/20.8.1"; what was not read in the text says so: "MGN 280 6.2, quoted from another source". */
export function sourceInShort(source: Source): string {
  const doubt = doubtInWords(source);
  if (doubt === null) return named(source) || statusWords.read;
  const name = source.status === 'common_practice' ? '' : named(source);
  return name ? `${name}, ${doubt}` : doubt;
}

/** How the figure came here, where nobody read all of it in the text. */
function doubtInWords({ status, fromMemory }: Source): string | null {
  if (status !== 'read') return statusWords[status];
  return fromMemory === undefined ? null : 'partly from memory';
}

/** "SOLAS III/20.8.1, read in the text." */
export function sourceInFull(source: Source): string {
  const name = named(source);
  return name && source.status !== 'common_practice'
    ? `${name}, ${statusWords[source.status]}.`
    : `${sentence(statusWords[source.status], name)}.`;
}

/** A notice as it was entered here: how far a figure was checked is not the question. */
export const noticeInFull = (source: Source): string => `${named(source)}, as entered here.`;

const named = ({ publication, clause }: Source) => [publication, clause].filter(Boolean).join(' ');

function sentence(status: string, name: string): string {
  const first = status.charAt(0).toUpperCase() + status.slice(1);
  return name ? `${first} (${name})` : first;
}
