/** How much is out of date, beside the page that lists it. */
import { useQuery } from '@tanstack/react-query';
import { strings } from '../strings/frame.ts';
import { countAll } from './counts.ts';
import { countsQuery } from './due.query.ts';

export function OverdueCount() {
  const { data } = useQuery(countsQuery(undefined));
  const overdue = data ? countAll(data.counts.overdue) + data.matters.overdue : 0;
  if (overdue === 0) return null;
  return (
    <span className="count">
      <span aria-hidden="true">{overdue}</span>
      <span className="out-of-sight"> {strings.countOutOfDate(overdue)}</span>
    </span>
  );
}
