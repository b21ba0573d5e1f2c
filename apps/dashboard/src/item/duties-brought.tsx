import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { whyItFailed } from '../api/why-it-failed.ts';
import { explainQuery } from '../rule/rule.query.ts';
import { type SchemeCode, weightWords } from '../strings/codes.ts';
import { strings } from '../strings/record.ts';
import { strings as vesselStrings } from '../strings/vessel.ts';
import { readersToday } from '../ui/calendar.ts';
import { Failed } from '../ui/failed.tsx';
import { sourceInShort } from './source-words.ts';

const { add } = strings;

/** What the rules will ask of such a thing aboard her, before anything is known of it. */
export function DutiesBrought({ kind, schemes }: { kind: string; schemes: SchemeCode[] }) {
  const { data, error, isPending, refetch } = useQuery(
    explainQuery({ kind, schemes, facts: [], asOf: readersToday() }),
  );
  if (isPending) return null;
  if (!data) return <Failed what={add.bringsFailed} why={whyItFailed(error)} again={refetch} />;
  return (
    <section className="brings" aria-label={add.brings}>
      <p className="field-name">{add.brings}</p>
      {data.items.length === 0 && <p className="quiet">{vesselStrings.noRule}</p>}
      <ul>
        {data.items.map(({ ruleId, duty, action, weight, explanation }) => (
          <li key={`${ruleId} ${duty}`}>
            {action.words}
            <span className="sub">
              {add.behind(weightWords[weight])} ·{' '}
              <Link to="/rules/$ruleId" params={{ ruleId }} target="_blank">
                {sourceInShort(explanation.source)}
              </Link>
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}
