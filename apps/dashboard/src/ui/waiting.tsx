import { useOnline } from '../frame/connection.tsx';
import { strings } from '../strings/frame.ts';

/** Shown only when an answer takes long enough to be noticed (the delay is in the style); without a network, at once. */
export function Waiting({ children }: { children: string }) {
  const online = useOnline();
  return (
    <p role="status" className={online ? 'waiting quiet' : 'waiting waiting-for-network'}>
      {online ? children : strings.offline.notRead}
    </p>
  );
}
