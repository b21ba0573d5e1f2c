/** Said over every page while nothing new can be read: what is seen is told to be old, and how old. */
import { onlineManager, useQuery } from '@tanstack/react-query';
import { useSyncExternalStore } from 'react';
import { countsQuery } from '../due-list/due.query.ts';
import { strings } from '../strings/frame.ts';
import { formatInstant } from '../ui/calendar.ts';

export function Connection() {
  const online = useOnline();
  const { isError, dataUpdatedAt } = useQuery(countsQuery(undefined));
  const told = !online ? strings.offline : isError ? strings.silent : null;
  return (
    <div role="status" className="connection">
      {told && (
        <p>
          <strong>{told.what}</strong> {dataUpdatedAt > 0 && told.seen(formatInstant(dataUpdatedAt))}
        </p>
      )}
    </div>
  );
}

export function useOnline(): boolean {
  return useSyncExternalStore(
    (listen) => onlineManager.subscribe(listen),
    () => onlineManager.isOnline(),
  );
}
