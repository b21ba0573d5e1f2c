/** A rule's source, with how far the figure was checked. */
import type { components } from '../generated/api.d.ts';

type Source = components['schemas']['Source'];

const STATUS: Record<Source['status'], string> = {
  read: 'read in the source',
  second_hand: 'read at second hand',
  memory: 'from memory, not checked',
  common_practice: 'common practice, no source',
};

export function sourceInShort(source: Source): string {
  return named(source) || STATUS[source.status];
}

/** "SOLAS III/20.8.1, read in the source." */
export function sourceInFull(source: Source): string {
  const name = named(source);
  return name && source.status !== 'common_practice'
    ? `${name}, ${STATUS[source.status]}.`
    : `${sentence(STATUS[source.status], name)}.`;
}

const named = ({ publication, clause }: Source) => [publication, clause].filter(Boolean).join(' ');

function sentence(status: string, name: string): string {
  const first = status.charAt(0).toUpperCase() + status.slice(1);
  return name ? `${first} (${name})` : first;
}
