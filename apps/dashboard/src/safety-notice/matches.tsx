/** What the notice would find, worked out as it is typed; nothing is kept. */
import { useDebouncedValue } from '@mantine/hooks';
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { strings } from '../strings/safety-notice.ts';
import { sentenceCase } from '../ui/number-words.ts';
import { matchesQuery, type NewSafetyNotice } from './notice.query.ts';
import { type NoticeDraft, toTrial } from './notice-draft.ts';

const { matches, one } = strings;
const PAUSE_MS = 350;

export function Matches({ draft }: { draft: NoticeDraft }) {
  const [settled] = useDebouncedValue(draft, PAUSE_MS);
  const trial = toTrial(settled);
  return (
    <aside className="matches" aria-live="polite">
      <h2>{matches.heading}</h2>
      {trial ? <Found trial={trial} /> : <p className="quiet">{matches.notYet}</p>}
    </aside>
  );
}

function Found({ trial }: { trial: NewSafetyNotice }) {
  const { data, error } = useQuery({ ...matchesQuery(trial), placeholderData: keepPreviousData });
  if (error) return <p className="quiet">{error.message}</p>;
  if (!data) return <p className="quiet">{matches.looking}</p>;
  const { affected, mayBeAffected, notAffected, vessels } = data.counts;
  return (
    <>
      <p>{matches.sentence(affected, mayBeAffected, vessels)}</p>
      <ul>
        {data.items
          .filter(({ match }) => match !== 'not_affected')
          .map(({ vessel, item, match, because }) => (
            <li key={item.id}>
              <span className={`standing ${match === 'affected' ? 'due' : 'unknown'}`}>
                {strings.item[match === 'affected' ? 'affected' : 'may_be_affected']}
              </span>
              <span>
                <span className="vessel-name">{vessel.name}</span>: {item.label},{' '}
                {item.serialNumber ? one.serial(item.serialNumber) : one.noSerial}
                {match === 'may_be_affected' && <span className="sub">{sentenceCase(because.join('; '))}.</span>}
              </span>
            </li>
          ))}
      </ul>
      {notAffected > 0 && <p className="quiet">{matches.spared(notAffected)}</p>}
    </>
  );
}
