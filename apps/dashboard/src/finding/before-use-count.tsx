/** How many findings must be dealt with before use, beside the page that lists them. */
import { useInfiniteQuery } from '@tanstack/react-query';
import { strings } from '../strings/frame.ts';
import { findingsQuery } from './finding.query.ts';

export function BeforeUseCount() {
  const { data } = useInfiniteQuery(findingsQuery({ open: 'true', urgency: 'before_use' }));
  const urgent = data?.pages.flatMap(({ items }) => items).length ?? 0;
  if (urgent === 0) return null;
  return (
    <span className="count">
      <span aria-hidden="true">{urgent}</span>
      <span className="out-of-sight"> {strings.countBeforeUse(urgent)}</span>
    </span>
  );
}
