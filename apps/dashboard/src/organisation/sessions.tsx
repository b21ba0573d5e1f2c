import { useQueryClient } from '@tanstack/react-query';
import { account } from '../strings/account.ts';
import { formatInstant } from '../ui/calendar.ts';
import { type Account, endOtherSessions, endSession, signOut } from './account.query.ts';
import { browserInWords } from './browser-words.ts';
import { useComeIn } from './use-come-in.ts';
import { useTrying } from './use-trying.ts';

const { sessions: words } = account;

export function Sessions({ sessions }: { sessions: Account['sessions'] }) {
  const queries = useQueryClient();
  const comeIn = useComeIn();
  const { trying, fault } = useTrying();
  const ending = (act: () => Promise<void>) =>
    trying(async () => {
      await act();
      await queries.invalidateQueries({ queryKey: ['account'] });
    });
  return (
    <>
      <ul className="rows">
        {sessions.map((session) => (
          <Line key={session.id} session={session} onEnd={() => ending(() => endSession(session.id))} />
        ))}
      </ul>
      <p role="status">{fault}</p>
      <p className="acts">
        <button type="button" onClick={() => trying(() => signOut().then(comeIn))}>
          {words.signOut}
        </button>
        {sessions.length > 1 && (
          <button type="button" onClick={() => ending(endOtherSessions)}>
            {words.endOthers}
          </button>
        )}
      </p>
    </>
  );
}

function Line({ session, onEnd }: { session: Account['sessions'][number]; onEnd: () => void }) {
  const browser = session.userAgent ? browserInWords(session.userAgent) : words.unknown;
  const since = formatInstant(Date.parse(session.startedAt));
  return (
    <li>
      <div>
        <strong>{browser}</strong>
        <span className="sub">
          {words.since(since)}, {words.until(formatInstant(Date.parse(session.endsAt)))}
        </span>
      </div>
      {session.current ? (
        <span className="quiet">{words.here}</span>
      ) : (
        <button type="button" aria-label={words.endOf(browser, since)} onClick={onEnd}>
          {words.end}
        </button>
      )}
    </li>
  );
}
