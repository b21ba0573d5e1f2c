/** What may be on record already of what is being typed, with the reasons. */
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { useDeferredValue } from 'react';
import { strings } from '../strings/finding.ts';
import type { Typed } from '../ui/quick-form.tsx';
import { alikeQuery } from './finding.query.ts';
import { readable } from './finding-line.tsx';

const { fresh } = strings;
const ENOUGH_LETTERS = 4;

export function Alike({ vesselId, typed }: { vesselId: string; typed: Typed }) {
  const { zone = '', what = '', itemId = '' } = useDeferredValue(typed);
  const question = { zone, what: what.trim(), ...(itemId && { itemId }) };
  const enabled = zone !== '' && question.what.length >= ENOUGH_LETTERS;
  const { data } = useQuery({ ...alikeQuery(vesselId, question), enabled, placeholderData: keepPreviousData });
  if (!enabled || !data || data.items.length === 0) return null;
  return (
    <aside className="alike" aria-live="polite">
      <h2>{fresh.alike}</h2>
      <p className="quiet">{fresh.alikeHow}</p>
      <ul>
        {data.items.map(({ finding, because }) => (
          <li key={finding.id}>
            <Link to="/findings/$findingId" params={{ findingId: finding.id }} search={{ do: 'look' }}>
              {finding.what}
            </Link>
            <span className="sub">
              {readable(finding.reads)} · {fresh.because(because.join(', '))}
            </span>
          </li>
        ))}
      </ul>
    </aside>
  );
}
