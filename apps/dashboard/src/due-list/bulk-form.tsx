/** One form for everything chosen. What is typed is kept until it is recorded. */

import { ApiProblem } from '@garboard/client/api-problem.ts';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import { readAnew } from '../api/read-anew.ts';
import { whyItFailed } from '../api/why-it-failed.ts';
import { emptyDraft, type Faults, toNewFact } from '../item/fact-draft.ts';
import { FACT_OF_ACTION } from '../item/fact-that-answers.ts';
import { useOnceKey } from '../item/use-once-key.ts';
import { strings } from '../strings/bulk.ts';
import { strings as recordStrings } from '../strings/record.ts';
import { Dialog } from '../ui/dialog.tsx';
import { FaultSummary } from '../ui/fault-summary.tsx';
import { BulkFields } from './bulk-fields.tsx';
import type { DueRow } from './due.query.ts';
import { type BulkResult, MOST_AT_ONCE, recordBulk } from './record-bulk.ts';

type Props = { things: readonly DueRow[]; onRecorded: (result: BulkResult) => void; onClose: () => void };

export function BulkForm({ things, onRecorded, onClose }: Props) {
  const [draft, setDraft] = useState({ ...emptyDraft, item: 'many', fact: commonFact(things) });
  const [faults, setFaults] = useState<Faults>({});
  const keyFor = useOnceKey();
  const queries = useQueryClient();
  const record = useMutation({
    mutationFn: recordBulk_,
    onSuccess: (result) => {
      onRecorded(result);
      void readAnew(queries);
    },
  });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const ready = toNewFact(draft, undefined);
    setFaults(ready.kind === 'faults' ? ready.faults : {});
    if (ready.kind !== 'ready' || things.length > MOST_AT_ONCE) return;
    const { body } = ready;
    record.mutate({ things, body, key: keyFor({ things: things.map(({ item }) => item.id), body }) });
  };
  return (
    <Dialog name={strings.title(things.length)} onClose={onClose}>
      <h2>{strings.title(things.length)}</h2>
      <p className="quiet">{strings.things(things.map(({ item, vessel }) => `${item.label}, ${vessel.name}`))}</p>
      {things.length > MOST_AT_ONCE && <p role="alert">{strings.tooMany(MOST_AT_ONCE)}</p>}
      <form className="form bulk-form" onSubmit={submit} noValidate>
        <FaultSummary
          heading={recordStrings.form.faultsHeading}
          why={recordStrings.form.faultsWhy}
          faults={Object.entries(faults).map(([box, fault]) => ({ id: `fact-${box}`, name: box, fault }))}
          others={othersOf(record.error)}
        />
        <BulkFields
          things={things}
          draft={draft}
          faults={faults}
          onChange={(box, value) => setDraft((now) => ({ ...now, [box]: value }))}
        />
        <p className="acts">
          <button type="submit" className="first" disabled={record.isPending}>
            {record.isPending ? recordStrings.form.sending : strings.submit(things.length)}
          </button>
          <button type="button" onClick={onClose}>
            {strings.leave}
          </button>
        </p>
      </form>
    </Dialog>
  );
}

const recordBulk_ = (asked: { things: readonly DueRow[]; body: Parameters<typeof recordBulk>[1]; key: string }) =>
  recordBulk(asked.things, asked.body, asked.key);

/** Where everything chosen asks the same act, the form starts with it. */
function commonFact(things: readonly DueRow[]): string {
  const acts = new Set(things.map(({ action }) => FACT_OF_ACTION[action.kind]));
  return acts.size === 1 ? ([...acts][0] ?? '') : '';
}

function othersOf(error: Error | null): string[] {
  if (!error) return [];
  if (!(error instanceof ApiProblem)) return [whyItFailed(error), recordStrings.form.notSent];
  const { errors, detail, title } = error.problem;
  return errors?.map((each) => each.detail) ?? [detail ?? title];
}
