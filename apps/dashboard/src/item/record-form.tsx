/** Keeps what is typed until it is recorded; brings back each fault to its box. */

import { ApiProblem } from '@garboard/client/api-problem.ts';
import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import { readAnew } from '../api/read-anew.ts';
import { whyItFailed } from '../api/why-it-failed.ts';
import { strings } from '../strings/record.ts';
import { FaultSummary } from '../ui/fault-summary.tsx';
import { BeforeRecording } from './before-recording.tsx';
import { type Box, boxesOf, type Draft, type Faults, retractionOf, toNewFact } from './fact-draft.ts';
import { faultsByBox } from './fact-faults.ts';
import { FactFields } from './fact-fields.tsx';
import { type Fact, type Item, itemsQuery, type Obligation, obligationsQuery } from './item.query.ts';
import { type RecordedFact, recordFact } from './record-fact.ts';
import { useOnceKey } from './use-once-key.ts';

export type Outcome = { item: Item; before: readonly Obligation[]; recorded: RecordedFact };
type Props = { vesselId: string; start: Draft; corrects: Fact | undefined; onRecorded: (outcome: Outcome) => void };

export function RecordForm({ vesselId, start, corrects, onRecorded }: Props) {
  const [draft, setDraft] = useState(start);
  const [refusal, setRefusal] = useState<{ faults: Faults; others: string[] }>({ faults: {}, others: [] });
  const items = useQuery(itemsQuery(vesselId)).data ?? [];
  const item = items.find(({ id }) => id === draft.item);
  const record = useRecording(item, onRecorded, (error) => setRefusal(refusalOf(error, draft.fact)));
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const ready = toNewFact(draft, corrects?.id);
    setRefusal({ faults: ready.kind === 'faults' ? ready.faults : {}, others: [] });
    if (ready.kind === 'ready') record.send(ready.body);
  };
  return (
    <div className="record">
      <form className="form" onSubmit={submit} noValidate>
        <FaultSummary
          heading={strings.form.faultsHeading}
          why={strings.form.faultsWhy}
          faults={Object.entries(refusal.faults).map(([box, fault]) => ({
            id: `fact-${box}`,
            name: nameOf(box as Box),
            fault,
          }))}
          others={refusal.others}
        />
        <FactFields
          draft={draft}
          items={items}
          faults={refusal.faults}
          correcting={corrects !== undefined}
          onChange={(box, value) => setDraft((now) => ({ ...now, [box]: value, ...(box === 'item' && { test: '' }) }))}
        />
        <p className="acts">
          <button type="submit" className="first" disabled={record.sending}>
            {record.sending ? strings.form.sending : corrects ? strings.form.strikeOut : strings.form.record}
          </button>
          {corrects && (
            <button
              type="button"
              disabled={record.sending}
              onClick={() => record.send(retractionOf(corrects, draft.note))}
            >
              {strings.form.retract}
            </button>
          )}
        </p>
        {corrects && <p className="quiet">{strings.form.retractHelp}</p>}
      </form>
      {item && (
        <aside>
          <BeforeRecording item={item} corrects={corrects} />
        </aside>
      )}
    </div>
  );
}

function useRecording(item: Item | undefined, onRecorded: Props['onRecorded'], onRefused: (error: Error) => void) {
  const queries = useQueryClient();
  const keyFor = useOnceKey();
  const before =
    useQuery({ ...obligationsQuery(item?.id ?? '', undefined), enabled: item !== undefined }).data?.items ?? [];
  const mutation = useMutation({ mutationFn: recordFact, onError: onRefused });
  const send = (body: Parameters<typeof recordFact>[0]['body']) => {
    if (!item) return;
    const done = (recorded: RecordedFact) => {
      onRecorded({ item, before, recorded });
      // One fact moves the list, the fleet, the vessel and the counts: all are asked again.
      void readAnew(queries);
    };
    mutation.mutate({ itemId: item.id, body, key: keyFor({ item: item.id, body }) }, { onSuccess: done });
  };
  return { send, sending: mutation.isPending };
}

function refusalOf(error: Error, fact: string): { faults: Faults; others: string[] } {
  if (error instanceof ApiProblem) return faultsByBox(error.problem, (box) => isShown(box, fact));
  return { faults: {}, others: [whyItFailed(error), strings.form.notSent] };
}

function isShown(box: Box, fact: string): boolean {
  const has = boxesOf(fact);
  if (box === 'name' || box === 'capacity' || box === 'certificate') return has.doneBy;
  if (box === 'readingValue' || box === 'readingUnit') return has.reading;
  if (box === 'outcome' || box === 'until' || box === 'readOn') return has[box];
  return true;
}

function nameOf(box: Box): string {
  const { form } = strings;
  if (box === 'readingValue') return form.reading;
  return box === 'readingUnit' ? form.unit : form[box];
}
