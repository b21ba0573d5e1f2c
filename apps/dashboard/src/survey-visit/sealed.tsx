/** A completed visit: its seal, its copy to take away, and the corrections that came afterwards. */
import { useQuery, useQueryClient } from '@tanstack/react-query';
import { useOnceKey } from '../item/use-once-key.ts';
import { useMay } from '../organisation/may.ts';
import { strings } from '../strings/survey-visit.ts';
import { formatDay, formatInstant } from '../ui/calendar.ts';
import { faultsOrDone } from '../ui/form-faults.ts';
import { QuickForm } from '../ui/quick-form.tsx';
import { addAddendum, sealedQuery, type Visit } from './visit.query.ts';

const { one } = strings;
const { addendum } = one;

export function Sealed({ visit }: { visit: Visit }) {
  const may = useMay();
  const { data } = useQuery(sealedQuery(visit.id));
  const queries = useQueryClient();
  const once = useOnceKey();
  const add = (typed: Readonly<Record<string, string>>) => {
    const body = { name: typed.name ?? '', words: typed.words ?? '', reason: typed.reason ?? '' };
    return faultsOrDone(async () => {
      await addAddendum(visit.id, body, once(body));
      await queries.invalidateQueries({ queryKey: ['visit', visit.id] });
    });
  };
  const copy = data && `data:application/json;charset=utf-8,${encodeURIComponent(JSON.stringify(data, null, 2))}`;
  return (
    <section className="sealed" aria-label={one.hash}>
      <p className="answer">{one.sealed(formatDay(visit.completedOn ?? visit.startedOn))}</p>
      <p className="quiet">
        {one.hash}: <code>{visit.sealedHash}</code>
      </p>
      {copy && (
        <p className="acts">
          <a className="button" href={copy} download={`visit-${visit.startedOn}.json`}>
            {one.take}
          </a>
        </p>
      )}
      {(data?.addenda.length ?? 0) > 0 && (
        <>
          <h2>{one.addenda}</h2>
          <ol className="addenda">
            {data?.addenda.map(({ id, name, words, reason, recordedAt }) => (
              <li key={id}>
                {words} <span className="sub">{[reason, name, formatInstant(Date.parse(recordedAt))].join(' · ')}</span>
              </li>
            ))}
          </ol>
        </>
      )}
      {may.survey && (
        <details>
          <summary>{addendum.submit}</summary>
          <QuickForm
            id="addendum"
            boxes={[
              { key: 'name', name: addendum.name },
              { key: 'words', name: addendum.words, kind: 'long' },
              { key: 'reason', name: addendum.reason },
            ]}
            submit={addendum.submit}
            onSubmit={add}
            quiet
          />
        </details>
      )}
    </section>
  );
}
