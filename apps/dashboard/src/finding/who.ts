/** Who wrote it, by name where they are still here. */
import { useQuery } from '@tanstack/react-query';
import { peopleQuery } from '../organisation/people.query.ts';
import { strings } from '../strings/finding.ts';

export function useWho(): (recordedBy: string) => string {
  const people = useQuery(peopleQuery()).data ?? [];
  return (recordedBy) => {
    const [kind, id] = recordedBy.split(':');
    if (kind === 'upkeep') return strings.one.upkeep;
    if (kind === 'share_link') return strings.one.outsider;
    if (kind !== 'person') return strings.one.program;
    return people.find((person) => person.id === id)?.name ?? strings.one.former;
  };
}
