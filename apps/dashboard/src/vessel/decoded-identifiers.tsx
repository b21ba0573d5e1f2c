/** What the identifiers say as they are typed: read by the program, nothing is kept. */
import { answer } from '@garboard/client/client.ts';
import { queryOptions, useQuery } from '@tanstack/react-query';
import { useDeferredValue } from 'react';
import { api } from '../api/client.ts';
import { strings } from '../strings/change-vessel.ts';
import { strings as vesselStrings } from '../strings/vessel.ts';

const readQuery = (text: string) =>
  queryOptions({
    queryKey: ['identifiers', text],
    enabled: text !== '{}',
    queryFn: ({ signal }) =>
      answer(api.POST('/v1/identifiers/read', { params: { header: {} }, body: JSON.parse(text), signal })),
    placeholderData: (before) => before,
  });

export function DecodedIdentifiers({ identifiers, builtYear }: { identifiers: object; builtYear: string }) {
  const year = /^\d{4}$/.test(builtYear.trim()) && { builtYear: Number(builtYear) };
  const isNone = Object.keys(identifiers).length === 0;
  const text = useDeferredValue(JSON.stringify(isNone ? {} : { ...identifiers, ...year }));
  const { data } = useQuery(readQuery(text));
  if (isNone || !data) return null;
  return (
    <div className="brings" role="status" aria-label={strings.reads}>
      <p className="field-name">{strings.reads}</p>
      <ul>
        {data.identifiers.map((each) => (
          <li key={each.inWords}>{each.inWords}</li>
        ))}
        {data.doubts.map((doubt) => (
          <li key={doubt}>
            <span className="standing unknown">{vesselStrings.identifiers.inDoubt}</span> {doubt}
          </li>
        ))}
      </ul>
    </div>
  );
}
