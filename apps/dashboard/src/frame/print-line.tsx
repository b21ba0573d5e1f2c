/** At the head of paper: whose list it is, when it was printed and what it knew. */
import { useQuery } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import { flushSync } from 'react-dom';
import { countsQuery } from '../due-list/due.query.ts';
import { strings } from '../strings/frame.ts';
import { formatInstant } from '../ui/calendar.ts';

export function PrintLine({ organisation }: { organisation: string }) {
  const { dataUpdatedAt } = useQuery(countsQuery(undefined));
  const [printedAt, setPrintedAt] = useState(() => Date.now());
  useEffect(() => {
    const printing = () => flushSync(() => setPrintedAt(Date.now()));
    window.addEventListener('beforeprint', printing);
    return () => window.removeEventListener('beforeprint', printing);
  }, []);
  return (
    <p className="print-line">
      {organisation}. {strings.printed(formatInstant(printedAt))}{' '}
      {dataUpdatedAt > 0 && strings.factsKnownTo(formatInstant(dataUpdatedAt))} {strings.caution}
    </p>
  );
}
