import { ApiProblem } from '@garboard/client/api-problem.ts';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useNavigate } from '@tanstack/react-router';
import { type FormEvent, useState } from 'react';
import { readAnew } from '../api/read-anew.ts';
import { whyItFailed } from '../api/why-it-failed.ts';
import { Options } from '../item/options.tsx';
import { useOnceKey } from '../item/use-once-key.ts';
import { strings } from '../strings/override.ts';
import { formatDay, readersToday } from '../ui/calendar.ts';
import { FaultSummary } from '../ui/fault-summary.tsx';
import { ChoiceField, LongField, TextField } from '../ui/fields.tsx';
import { type NewOverride, setOverride } from './override.query.ts';
import {
  type OverrideBox,
  type OverrideDraft,
  type OverrideFaults,
  overrideFaults,
  toldOverrideFaults,
  toNewOverride,
} from './override-draft.ts';

type About = { readonly itemId: string; readonly ruleId: string; readonly duty: string };
type Refusal = { readonly faults: OverrideFaults; readonly others: string[] };

export function OverrideForm({ vesselId, about }: { vesselId: string; about: About }) {
  const [draft, setDraft] = useState<OverrideDraft>({
    ...{ about: 'item', period: '', weight: 'maker', decidedBy: '', reason: '', document: '' },
    from: formatDay(readersToday()),
  });
  const [refusal, setRefusal] = useState<Refusal>({ faults: {}, others: [] });
  const setting = useSetting(vesselId, (error) => setRefusal(refusalOf(error)));
  const onSubmit = (event: FormEvent) => {
    event.preventDefault();
    const ready = toNewOverride(draft, about);
    setRefusal({ faults: ready.kind === 'faults' ? ready.faults : {}, others: [] });
    if (ready.kind === 'ready') setting.mutate(ready.body);
  };
  const field = (box: OverrideBox) => ({
    id: `figure-${box}`,
    name: strings.box[box],
    value: draft[box],
    fault: refusal.faults[box],
    onChange: (value: string) => setDraft((now) => ({ ...now, [box]: value })),
  });
  return (
    <form className="form figure" onSubmit={onSubmit} noValidate>
      <FaultSummary
        heading={strings.faultsHeading}
        why={strings.faultsWhy}
        faults={toldOverrideFaults(refusal.faults)}
        others={refusal.others}
      />
      <TextField {...field('period')} help={strings.periodHelp} short />
      <ChoiceField {...field('weight')}>
        <Options words={strings.weights} />
      </ChoiceField>
      <ChoiceField {...field('about')}>
        <Options words={strings.about} />
      </ChoiceField>
      <TextField {...field('from')} help={strings.fromHelp} short />
      <TextField {...field('decidedBy')} />
      <LongField {...field('reason')} />
      <TextField {...field('document')} help={strings.documentHelp} />
      <p className="acts">
        <button type="submit" className="first" disabled={setting.isPending}>
          {setting.isPending ? strings.sending : strings.set}
        </button>
      </p>
    </form>
  );
}

function useSetting(vesselId: string, onError: (error: Error) => void) {
  const queries = useQueryClient();
  const navigate = useNavigate();
  const keyFor = useOnceKey();
  return useMutation({
    mutationFn: (body: NewOverride) => setOverride(vesselId, body, keyFor(body)),
    onError,
    onSuccess: async ({ id }) => {
      await readAnew(queries);
      await navigate({ to: '/overrides/$overrideId', params: { overrideId: id } });
    },
  });
}

function refusalOf(error: Error): Refusal {
  return error instanceof ApiProblem
    ? overrideFaults(error.problem)
    : { faults: {}, others: [whyItFailed(error), strings.notSent] };
}
