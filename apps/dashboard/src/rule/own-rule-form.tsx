/** The whole text of a version: the first of a rule, or another. */

import { ApiProblem } from '@garboard/client/api-problem.ts';
import { useMutation, useQueries, useQueryClient } from '@tanstack/react-query';
import { useNavigate } from '@tanstack/react-router';
import { type FormEvent, useState } from 'react';
import { readAnew } from '../api/read-anew.ts';
import { whyItFailed } from '../api/why-it-failed.ts';
import { itemKindsQuery } from '../item/catalogue.query.ts';
import { useOnceKey } from '../item/use-once-key.ts';
import { strings } from '../strings/own-rule.ts';
import { strings as ruleStrings } from '../strings/rule.ts';
import { Failed } from '../ui/failed.tsx';
import { FaultSummary } from '../ui/fault-summary.tsx';
import { Waiting } from '../ui/waiting.tsx';
import { DecisionFields } from './decision-fields.tsx';
import { vesselNamesQuery } from './own-rule.query.ts';
import { type NewOwnRule, type OwnRuleDraft, type OwnRuleFaults, toNewOwnRule } from './own-rule-draft.ts';
import { OwnRuleFields } from './own-rule-fields.tsx';
import type { LimitBox } from './own-rule-limits.ts';
import { ownRuleFaults, toldOwnRuleFaults } from './own-rule-text.ts';

type Send = (body: NewOwnRule, key: string) => Promise<{ readonly id: string }>;
type Props = { start: OwnRuleDraft; submit: string; send: Send };
type Refusal = { faults: OwnRuleFaults; others: string[] };

export function OwnRuleForm({ start, submit, send }: Props) {
  const [kinds, vessels] = useQueries({ queries: [itemKindsQuery(), vesselNamesQuery()] });
  const [draft, setDraft] = useState(start);
  const [refusal, setRefusal] = useState<Refusal>({ faults: {}, others: [] });
  const change = (more: Partial<OwnRuleDraft>) => setDraft((now) => ({ ...now, ...more }));
  const laying = useLaying(send, setRefusal);
  const failed = [kinds, vessels].find((each) => each.isError);
  if (failed) return <Failed what={ruleStrings.failed} why={whyItFailed(failed.error)} again={failed.refetch} />;
  if (!kinds.data || !vessels.data) return <Waiting>{ruleStrings.waiting}</Waiting>;
  const onSubmit = (event: FormEvent) => {
    event.preventDefault();
    const ready = toNewOwnRule(draft);
    setRefusal({ faults: ready.kind === 'faults' ? ready.faults : {}, others: [] });
    if (ready.kind === 'ready') laying.send(ready);
  };
  return (
    <form className="form" onSubmit={onSubmit} noValidate>
      <FaultSummary
        heading={strings.faultsHeading}
        why={strings.faultsWhy}
        faults={toldOwnRuleFaults(refusal.faults)}
        others={refusal.others}
      />
      <OwnRuleFields
        draft={draft}
        faults={refusal.faults}
        kinds={kinds.data}
        vessels={vessels.data}
        onChange={change}
      />
      <DecisionFields
        field={(box) => ({
          id: `rule-${box}`,
          name: strings.box[box],
          value: draft[box],
          fault: refusal.faults[box],
          onChange: (value) => change({ [box]: value }),
        })}
      />
      <p className="acts">
        <button type="submit" className="first" disabled={laying.sending}>
          {laying.sending ? strings.sending : submit}
        </button>
      </p>
    </form>
  );
}

type Ready = { readonly body: NewOwnRule; readonly limitBoxes: readonly LimitBox[] };

function useLaying(send: Send, onRefused: (refusal: Refusal) => void) {
  const queries = useQueryClient();
  const navigate = useNavigate();
  const keyFor = useOnceKey();
  const mutation = useMutation({
    mutationFn: ({ body }: Ready) => send(body, keyFor(body)),
    onError: (error, { limitBoxes }) => onRefused(refusalOf(error, limitBoxes)),
    onSuccess: async ({ id }) => {
      await readAnew(queries);
      await navigate({ to: '/rules/$ruleId', params: { ruleId: id } });
    },
  });
  return { send: mutation.mutate, sending: mutation.isPending };
}

function refusalOf(error: Error, limitBoxes: readonly LimitBox[]): Refusal {
  return error instanceof ApiProblem
    ? ownRuleFaults(error.problem, limitBoxes)
    : { faults: {}, others: [whyItFailed(error), strings.notSent] };
}
