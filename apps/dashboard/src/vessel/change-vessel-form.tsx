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
import type { Scheme } from '../rule/rule.query.ts';
import { strings } from '../strings/change-vessel.ts';
import { FaultSummary } from '../ui/fault-summary.tsx';
import { ParticularsFields } from './particulars-fields.tsx';
import {
  asItIsNow,
  type Box,
  type ChangeFaults,
  changeFaults,
  draftOfVessel,
  toVesselChange,
} from './vessel-change.ts';

type Vessel = components['schemas']['Vessel'];
type Props = { vessel: Vessel; version: string; schemes: readonly Scheme[] };

export function ChangeVesselForm({ vessel, version, schemes }: Props) {
  const [draft, setDraft] = useState(() => draftOfVessel(vessel));
  const [refusal, setRefusal] = useState<{ faults: ChangeFaults; others: string[] }>({ faults: {}, others: [] });
  const change = useChanging(vessel.id, version, (error) => setRefusal(refusalOf(error)));
  const theirs = isStatus(change.error, 412) ? asItIsNow(draft, vessel) : [];
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const ready = toVesselChange(draft, vessel);
    if (ready.kind === 'faults') return setRefusal({ faults: ready.faults, others: [] });
    if (Object.keys(ready.body).length === 0) return setRefusal({ faults: {}, others: [strings.nothing] });
    change.mutate(ready.body);
  };
  return (
    <form className="form" onSubmit={submit} noValidate>
      <FaultSummary
        heading={strings.faultsHeading}
        why={strings.faultsWhy}
        faults={Object.entries(refusal.faults).map(([box, fault]) => ({
          ...{ id: `vessel-${box}`, name: strings.box[box as Box] },
          fault,
        }))}
        others={refusal.others}
      />
      {theirs.length > 0 && (
        <section className="brings" aria-label={strings.now}>
          <p className="field-name">{strings.now}</p>
          <dl>
            {theirs.map(({ name, now }) => (
              <div key={name}>
                <dt>{name}</dt>
                <dd>{now || '–'}</dd>
              </div>
            ))}
          </dl>
        </section>
      )}
      <ParticularsFields
        draft={draft}
        faults={refusal.faults}
        schemes={schemes}
        onChange={(changed) => setDraft((now) => ({ ...now, ...changed }))}
      />
      <p className="acts">
        <button type="submit" className="first" disabled={change.isPending}>
          {change.isPending ? strings.saving : strings.save}
        </button>
      </p>
    </form>
  );
}

/** After a refusal she is read anew, so that the next try names the version that is shown here. */
function useChanging(vesselId: string, version: string, onRefused: (error: Error) => void) {
  const queries = useQueryClient();
  const navigate = useNavigate();
  return useMutation({
    mutationFn: (body: components['schemas']['VesselChange']) =>
      answer(
        api.PATCH('/v1/vessels/{vesselId}', {
          params: { path: { vesselId }, header: { 'If-Match': version } },
          body,
        }),
      ),
    onError: async (error) => {
      if (isStatus(error, 412)) await readAnew(queries);
      onRefused(error);
    },
    onSuccess: async () => {
      await readAnew(queries);
      await navigate({ to: '/vessels/$vesselId', params: { vesselId } });
    },
  });
}

function refusalOf(error: Error) {
  if (isStatus(error, 412)) return { faults: {}, others: [strings.stale] };
  return error instanceof ApiProblem
    ? changeFaults(error.problem)
    : { faults: {}, others: [whyItFailed(error), strings.notSent] };
}
