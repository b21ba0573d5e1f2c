/** The form that records a fact, and afterwards what the fact changed. */

import { isStatus } from '@garboard/client/api-problem.ts';
import { useQueries, useQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import { useState } from 'react';
import { whyItFailed } from '../api/why-it-failed.ts';
import { NotHere } from '../frame/not-here.tsx';
import { strings } from '../strings/item.ts';
import { strings as words } from '../strings/record.ts';
import { strings as vesselStrings } from '../strings/vessel.ts';
import { Failed } from '../ui/failed.tsx';
import { PageHeader } from '../ui/page-header.tsx';
import { Waiting } from '../ui/waiting.tsx';
import { vesselQuery } from '../vessel/vessel.query.ts';
import { draftOf, emptyDraft } from './fact-draft.ts';
import { factsQuery, itemsQuery } from './item.query.ts';
import { type Outcome, RecordForm } from './record-form.tsx';
import { Recorded } from './recorded.tsx';
import './record.css';

const route = getRouteApi('/vessels/$vesselId/record');
const { form } = words;

export function RecordPage() {
  const { vesselId } = route.useParams();
  const search = route.useSearch();
  const [outcome, setOutcome] = useState<Outcome>();
  const [vessel, items] = useQueries({ queries: [vesselQuery(vesselId), itemsQuery(vesselId)] });
  const failed = [vessel, items].find((each) => each.isError);
  if (failed && isStatus(failed.error, 404)) return <NotHere />;
  if (failed)
    return <Failed what={vesselStrings.failed} why={whyItFailed(failed.error)} again={() => void failed.refetch()} />;
  if (!vessel.data || !items.data) return <Waiting>{vesselStrings.waiting}</Waiting>;
  const { name } = vessel.data;
  if (outcome)
    return <Recorded outcome={outcome} vesselId={vesselId} vesselName={name} onAnother={() => setOutcome(undefined)} />;
  return (
    <>
      <PageHeader title={search.corrects ? form.correctTitle(name) : form.title(name)}>
        <p>
          <Link to="/vessels/$vesselId" params={{ vesselId }}>
            {form.back(name)}
          </Link>
        </p>
        <p>{form.intro}</p>
      </PageHeader>
      {search.corrects && search.item ? (
        <Correction itemId={search.item} factId={search.corrects} vesselId={vesselId} onRecorded={setOutcome} />
      ) : (
        <RecordForm
          vesselId={vesselId}
          start={{ ...emptyDraft, item: search.item ?? '', fact: known(search.fact), test: search.test ?? '' }}
          corrects={undefined}
          onRecorded={setOutcome}
        />
      )}
    </>
  );
}

const known = (fact: string | undefined) => (fact && Object.hasOwn(words.happened, fact) ? fact : '');

type CorrectionProps = { itemId: string; factId: string; vesselId: string; onRecorded: (outcome: Outcome) => void };

/** The form waits for the fact that it starts from. */
function Correction({ itemId, factId, vesselId, onRecorded }: CorrectionProps) {
  const { data, error, isPending, refetch } = useQuery(factsQuery(itemId));
  if (isPending) return <Waiting>{strings.waiting}</Waiting>;
  if (!data) return <Failed what={strings.failed} why={whyItFailed(error)} again={refetch} />;
  const wrong = data.find((fact) => fact.id === factId && !fact.struckOutBy);
  if (!wrong) return <p role="alert">{form.noSuchFact}</p>;
  return <RecordForm vesselId={vesselId} start={draftOf(wrong)} corrects={wrong} onRecorded={onRecorded} />;
}
