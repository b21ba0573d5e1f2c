import { ApiProblem } from '@garboard/client/api-problem.ts';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { getRouteApi } from '@tanstack/react-router';
import { type FormEvent, useState } from 'react';
import { readAnew } from '../api/read-anew.ts';
import { whyItFailed } from '../api/why-it-failed.ts';
import { useOnceKey } from '../item/use-once-key.ts';
import { strings } from '../strings/own-rule.ts';
import { formatDay, readersToday } from '../ui/calendar.ts';
import { FaultSummary } from '../ui/fault-summary.tsx';
import { DecisionFields } from './decision-fields.tsx';
import { type Ending, endRule } from './own-rule.query.ts';
import { type OwnRuleFaults, readDay } from './own-rule-draft.ts';
import { ownRuleFaults, toldOwnRuleFaults } from './own-rule-text.ts';
import { OwnRuleToChange } from './own-rule-to-change.tsx';
import './own-rule.css';

const route = getRouteApi('/rules/$ruleId/end');

export function EndRulePage() {
  const { ruleId } = route.useParams();
  return (
    <OwnRuleToChange ruleId={ruleId} title={strings.endTitle} intro={strings.endIntro}>
      {({ id }, { version }) => <EndForm ruleId={id} version={version} />}
    </OwnRuleToChange>
  );
}

const NONE = { faults: {} as OwnRuleFaults, others: [] as string[] };

function EndForm({ ruleId, version }: { ruleId: string; version: number }) {
  const [draft, setDraft] = useState<Ending>({
    ...{ takesEffectOn: formatDay(readersToday()), decidedBy: '', reason: '', document: '' },
  });
  const [refusal, setRefusal] = useState(NONE);
  const ending = useEnding(ruleId, version, (error) =>
    setRefusal(
      error instanceof ApiProblem
        ? ownRuleFaults(error.problem, [])
        : { faults: {}, others: [whyItFailed(error), strings.notSent] },
    ),
  );
  const onSubmit = (event: FormEvent) => {
    event.preventDefault();
    const { faults, body } = toEnding(draft);
    setRefusal({ faults, others: [] });
    if (Object.keys(faults).length === 0) ending.mutate(body);
  };
  return (
    <form className="form" onSubmit={onSubmit} noValidate>
      <FaultSummary
        heading={strings.faultsHeading}
        why={strings.faultsWhy}
        faults={toldOwnRuleFaults(refusal.faults)}
        others={refusal.others}
      />
      <DecisionFields
        field={(box) => ({
          id: `rule-${box}`,
          name: box === 'takesEffectOn' ? strings.countsNoMore : strings.box[box],
          value: draft[box as keyof Ending],
          fault: refusal.faults[box],
          onChange: (value) => setDraft((now) => ({ ...now, [box]: value })),
        })}
      />
      <p className="acts">
        <button type="submit" className="first" disabled={ending.isPending}>
          {ending.isPending ? strings.sending : strings.endIt}
        </button>
      </p>
    </form>
  );
}

function toEnding(draft: Ending): { faults: OwnRuleFaults; body: Ending } {
  const on = readDay(draft.takesEffectOn);
  const empty = (['decidedBy', 'reason', 'document'] as const).filter((box) => draft[box].trim() === '');
  const faults = {
    ...(on.kind === 'fault' && { takesEffectOn: on.why }),
    ...Object.fromEntries(empty.map((box) => [box, strings.faults.empty])),
  };
  return { faults, body: { ...draft, takesEffectOn: on.kind === 'read' ? on.date : '' } };
}

function useEnding(ruleId: string, version: number, onError: (error: Error) => void) {
  const queries = useQueryClient();
  const navigate = route.useNavigate();
  const keyFor = useOnceKey();
  return useMutation({
    mutationFn: (body: Ending) => endRule(ruleId, version, body, keyFor(body)),
    onError,
    onSuccess: async () => {
      await readAnew(queries);
      await navigate({ to: '/rules/$ruleId', params: { ruleId } });
    },
  });
}
