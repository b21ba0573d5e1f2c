/** Keeps what is typed; where somebody else was quicker, shows theirs beside it before anything is written over. */

import { ApiProblem, isStatus } from '@garboard/client/api-problem.ts';
import { answer } from '@garboard/client/client.ts';
import type { components } from '@garboard/client/generated/api.d.ts';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useNavigate } from '@tanstack/react-router';
import { type FormEvent, useState } from 'react';
import { api } from '../api/client.ts';
import { readAnew } from '../api/read-anew.ts';
import { whyItFailed } from '../api/why-it-failed.ts';
import { strings } from '../strings/record.ts';
import { FaultSummary } from '../ui/fault-summary.tsx';
import type { Item } from './item.query.ts';
import { draftOfItem, type ItemDraft, type ItemFaults, itemFaults, namedFaults, toItemChange } from './item-draft.ts';
import { ItemFields } from './item-fields.tsx';

type Attribute = components['schemas']['Attribute'];
type Props = { item: Item; version: string; known: readonly Attribute[] };
type Refusal = { faults: ItemFaults; others: string[] };

const { change: words } = strings;

export function ChangeForm({ item, version, known }: Props) {
  const [draft, setDraft] = useState(() => draftOfItem(item, known));
  const [refusal, setRefusal] = useState<Refusal>({ faults: {}, others: [] });
  const change = useChanging(item, version, (error) => setRefusal(refusalOf(error)));
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const ready = toItemChange(draft, known, item);
    setRefusal({ faults: ready.kind === 'faults' ? ready.faults : {}, others: [] });
    if (ready.kind === 'ready') change.mutate(ready.body);
  };
  return (
    <form className="form" onSubmit={submit} noValidate>
      <FaultSummary
        heading={words.faultsHeading}
        why={strings.form.faultsWhy}
        faults={namedFaults(refusal.faults, known)}
        others={refusal.others}
      />
      {isStatus(change.error, 412) && <AsItIsNow item={item} draft={draft} known={known} />}
      <ItemFields
        draft={draft}
        schemes={[]}
        faults={refusal.faults}
        kindIsFixed
        onChange={(changed) => setDraft((now) => ({ ...now, ...changed }))}
      />
      <p className="acts">
        <button type="submit" className="first" disabled={change.isPending}>
          {change.isPending ? words.saving : words.save}
        </button>
      </p>
    </form>
  );
}

/** After a refusal the thing is read anew, so that the next try names the version that is shown here. */
function useChanging(item: Item, version: string, onRefused: (error: Error) => void) {
  const queries = useQueryClient();
  const navigate = useNavigate();
  return useMutation({
    mutationFn: (body: components['schemas']['ItemChange']) =>
      answer(
        api.PATCH('/v1/items/{itemId}', {
          params: { path: { itemId: item.id }, header: { 'If-Match': version } },
          body,
        }),
      ),
    onError: async (error) => {
      if (isStatus(error, 412)) await readAnew(queries);
      onRefused(error);
    },
    onSuccess: async () => {
      await readAnew(queries);
      await navigate({
        to: '/vessels/$vesselId',
        params: { vesselId: item.vesselId },
        search: { thing: item.id },
      });
    },
  });
}

const BOXES = ['label', 'zone', 'quantity', 'maker', 'model', 'serialNumber'] as const;

function AsItIsNow({ item, draft, known }: { item: Item; draft: ItemDraft; known: readonly Attribute[] }) {
  const now = draftOfItem(item, known);
  const boxes = BOXES.map((box) => ({ name: strings.add[box], now: now[box], typed: draft[box] }));
  const attributes = known.map(({ name, words: said }) => ({
    ...{ name: said, now: now.attributes[name] ?? '' },
    typed: draft.attributes[name] ?? '',
  }));
  return (
    <section className="brings" aria-label={words.now}>
      <p className="field-name">{words.now}</p>
      <dl>
        {[...boxes, ...attributes]
          .filter((each) => each.now !== each.typed)
          .map((each) => (
            <div key={each.name}>
              <dt>{each.name}</dt>
              <dd>{each.now || '–'}</dd>
            </div>
          ))}
      </dl>
    </section>
  );
}

function refusalOf(error: Error): Refusal {
  if (isStatus(error, 412)) return { faults: {}, others: [words.stale] };
  return error instanceof ApiProblem
    ? itemFaults(error.problem)
    : { faults: {}, others: [whyItFailed(error), strings.form.notSent] };
}
