import { ApiProblem } from '@garboard/client/api-problem.ts';
import { Link, useNavigate } from '@tanstack/react-router';
import { type FormEvent, useState } from 'react';
import { whyItFailed } from '../api/why-it-failed.ts';
import type { ItemKind } from '../item/catalogue.query.ts';
import type { Scheme } from '../rule/rule.query.ts';
import { strings } from '../strings/new-vessel.ts';
import { FaultSummary } from '../ui/fault-summary.tsx';
import { ChoiceField } from '../ui/fields.tsx';
import { sentenceCase } from '../ui/number-words.ts';
import { type EntryFaults, entryFaults, NO_FAULTS, toldFaults } from './entry-faults.ts';
import type { Template } from './template.query.ts';
import { type ThingDraft, thingsOf, toNewItems } from './thing-draft.ts';
import { ThingsToConfirm } from './things-to-confirm.tsx';
import { type Entry, useEntering } from './use-entering.ts';
import { emptyVessel, toNewVessel } from './vessel-draft.ts';
import { VesselFields } from './vessel-fields.tsx';

type Props = { templates: readonly Template[]; schemes: readonly Scheme[]; kinds: readonly ItemKind[] };

export function NewVesselForm({ templates, schemes, kinds }: Props) {
  const navigate = useNavigate();
  const [draft, setDraft] = useState(emptyVessel);
  const list = useThings(templates);
  const [refusal, setRefusal] = useState(NO_FAULTS);
  const entering = useEntering({
    entered: ({ id }) => void navigate({ to: '/vessels/$vesselId', params: { vesselId: id } }),
    refused: (error, entry) => setRefusal(refusalOf(error, entry)),
  });
  const { entered, sending } = entering;
  const nameOfKind = (asked: string) => sentenceCase(kinds.find(({ id }) => id === asked)?.name ?? asked);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const vessel = toNewVessel(draft);
    const things = toNewItems(list.things);
    setRefusal({
      vessel: vessel.kind === 'faults' ? vessel.faults : {},
      things: things.kind === 'faults' ? things.faults : {},
      others: [],
    });
    if (vessel.kind === 'ready' && things.kind === 'ready') entering.send({ vessel: vessel.body, things });
  };
  return (
    <form className="form new-vessel" onSubmit={submit} noValidate>
      <FaultSummary
        heading={entered ? strings.entered(entered.name) : strings.faultsHeading}
        why={strings.faultsWhy}
        faults={toldFaults(refusal, list.things, nameOfKind)}
        others={refusal.others}
      />
      <fieldset className="hers" disabled={entered !== undefined}>
        <legend>{strings.particulars}</legend>
        <VesselFields
          draft={draft}
          faults={refusal.vessel}
          schemes={schemes}
          onChange={(change) => setDraft((now) => ({ ...now, ...change }))}
        />
      </fieldset>
      <fieldset>
        <legend>{strings.things}</legend>
        <TemplateChoice templates={templates} chosen={list.templateId} onChoose={list.choose} />
        {list.things.length > 0 && (
          <ThingsToConfirm
            things={list.things}
            faults={refusal.things}
            nameOfKind={nameOfKind}
            onChange={list.change}
          />
        )}
      </fieldset>
      <p className="acts">
        <button type="submit" className="first" disabled={sending}>
          {sending ? strings.submitting : entered ? strings.submitThings : strings.submit}
        </button>
        {entered && (
          <Link to="/vessels/$vesselId" params={{ vesselId: entered.id }} className="button">
            {strings.goThere(entered.name)}
          </Link>
        )}
      </p>
    </form>
  );
}

/** What was typed for one template is still there after a look at another. */
function useThings(templates: readonly Template[]) {
  const [templateId, choose] = useState('');
  const [drafts, setDrafts] = useState<Readonly<Record<string, readonly ThingDraft[]>>>({});
  const template = templates.find(({ id }) => id === templateId);
  const things = template ? (drafts[templateId] ?? thingsOf(template)) : [];
  const change = (row: number, changed: Partial<ThingDraft>) =>
    setDrafts((now) => ({
      ...now,
      [templateId]: (now[templateId] ?? things).map((thing, at) => (at === row ? { ...thing, ...changed } : thing)),
    }));
  return { templateId, choose, things, change };
}

function TemplateChoice(props: { templates: readonly Template[]; chosen: string; onChoose: (id: string) => void }) {
  const { templates, chosen, onChoose } = props;
  const template = templates.find(({ id }) => id === chosen);
  return (
    <div className="hers">
      <ChoiceField
        id="vessel-template"
        name={strings.template}
        help={strings.templateHelp}
        value={chosen}
        onChange={onChoose}
      >
        <option value="">{strings.noTemplate}</option>
        {templates.map(({ id, name }) => (
          <option key={id} value={id}>
            {name}
          </option>
        ))}
      </ChoiceField>
      {template && <p className="quiet for-whom">{template.forWhom}</p>}
    </div>
  );
}

function refusalOf(error: Error, { things }: Entry): EntryFaults {
  return error instanceof ApiProblem
    ? entryFaults(error.problem, things.rows)
    : { ...NO_FAULTS, others: [whyItFailed(error), strings.notSent] };
}
