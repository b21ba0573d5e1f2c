/** A letter went out: where to look for it, and in the demo, which sends none, where it is kept. */
import { useQuery } from '@tanstack/react-query';
import { doors } from '../strings/doors.ts';
import { Outside } from './outside.tsx';

export function LetterSent({ title, how }: { title: string; how: string }) {
  const outbox = useQuery({
    queryKey: ['outbox'],
    queryFn: async () => (await fetch('/outbox', { method: 'HEAD' })).ok,
    retry: false,
  });
  return (
    <Outside title={title} how={how}>
      {outbox.data && (
        <p>
          <a href="/outbox">{doors.outbox}</a>
        </p>
      )}
    </Outside>
  );
}
