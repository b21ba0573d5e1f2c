/** The form that puts a thing aboard on her list. */

import { ApiProblem, isStatus } from '@garboard/client/api-problem.ts';
import { answer } from '@garboard/client/client.ts';
import type { components } from '@garboard/client/generated/api.d.ts';
import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import { type FormEvent, useState } from 'react';
import { api } from '../api/client.ts';
import { readAnew } from '../api/read-anew.ts';
import { whyItFailed } from '../api/why-it-failed.ts';
import { NotHere } from '../frame/not-here.tsx';
import type { SchemeCode } from '../strings/codes.ts';
import { strings } from '../strings/record.ts';
import { strings as vesselStrings } from '../strings/vessel.ts';
import { Failed } from '../ui/failed.tsx';
import { FaultSummary } from '../ui/fault-summary.tsx';
import { PageHeader } from '../ui/page-header.tsx';
import { Waiting } from '../ui/waiting.tsx';
import { vesselQuery } from '../vessel/vessel.query.ts';
import { itemKindsQuery } from './catalogue.query.ts';
import { emptyItem, type ItemFaults, itemFaults, namedFaults, toNewItem } from './item-draft.ts';
import { ItemFields } from './item-fields.tsx';
import { useOnceKey } from './use-once-key.ts';
import './record.css';

const route = getRouteApi('/vessels/$vesselId/add');

export function AddPage() {
  const { vesselId } = route.useParams();
  const { data, error, isPending, refetch } = useQuery(vesselQuery(vesselId));
  if (isPending) return <Waiting>{vesselStrings.waiting}</Waiting>;
  if (isStatus(error, 404)) return <NotHere />;
  if (!data) return <Failed what={vesselStrings.failed} why={whyItFailed(error)} again={refetch} />;
  return (
    <>
      <PageHeader title={strings.add.title(data.name)}>
        <p>
          <Link to="/vessels/$vesselId" params={{ vesselId }}>
            {strings.form.back(data.name)}
          </Link>
        </p>
        <p>{strings.add.intro}</p>
      </PageHeader>
      <AddForm vesselId={vesselId} schemes={data.schemes} />
    </>
  );
}

function AddForm({ vesselId, schemes }: { vesselId: string; schemes: SchemeCode[] }) {
  const [draft, setDraft] = useState(emptyItem);
  const [refusal, setRefusal] = useState<{ faults: ItemFaults; others: string[] }>({ faults: {}, others: [] });
  const known = useQuery(itemKindsQuery()).data?.find(({ id }) => id === draft.kind)?.attributes ?? [];
  const add = useAdding(vesselId, (error) => setRefusal(refusalOf(error)));
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const ready = toNewItem(draft, known);
    setRefusal({ faults: ready.kind === 'faults' ? ready.faults : {}, others: [] });
    if (ready.kind === 'ready') add.send(ready.body);
  };
  return (
    <form className="form" onSubmit={submit} noValidate>
      <FaultSummary
        heading={strings.add.faultsHeading}
        why={strings.form.faultsWhy}
        faults={namedFaults(refusal.faults, known)}
        others={refusal.others}
      />
      <ItemFields
        draft={draft}
        schemes={schemes}
        faults={refusal.faults}
        onChange={(change) => setDraft((now) => ({ ...now, ...change }))}
      />
      <p className="acts">
        <button type="submit" className="first" disabled={add.sending}>
          {add.sending ? strings.add.adding : strings.add.add}
        </button>
      </p>
    </form>
  );
}

/** Once it is aboard, what is known of its dates comes next. */
function useAdding(vesselId: string, onRefused: (error: Error) => void) {
  const queries = useQueryClient();
  const navigate = route.useNavigate();
  const keyFor = useOnceKey();
  const mutation = useMutation({
    mutationFn: (body: components['schemas']['NewItem']) =>
      answer(
        api.POST('/v1/vessels/{vesselId}/items', {
          params: { path: { vesselId }, header: { 'Idempotency-Key': keyFor(body) } },
          body,
        }),
      ),
    onError: onRefused,
    onSuccess: async (item) => {
      await readAnew(queries);
      await navigate({ to: '/vessels/$vesselId/record', params: { vesselId }, search: { item: item.id } });
    },
  });
  return { send: mutation.mutate, sending: mutation.isPending };
}

function refusalOf(error: Error): { faults: ItemFaults; others: string[] } {
  return error instanceof ApiProblem
    ? itemFaults(error.problem)
    : { faults: {}, others: [whyItFailed(error), strings.form.notSent] };
}
