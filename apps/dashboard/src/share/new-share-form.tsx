import { useQuery, useQueryClient } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import { endAfter } from '../api-key/api-key.query.ts';
import { useOnceKey } from '../item/use-once-key.ts';
import { type GrantFaults, grantFaults, NO_GRANT_FAULTS } from '../organisation/grant-faults.ts';
import { vesselNamesQuery } from '../rule/own-rule.query.ts';
import { doors } from '../strings/people.ts';
import { strings } from '../strings/share.ts';
import { FaultSummary } from '../ui/fault-summary.tsx';
import { ChoiceField, TextField } from '../ui/fields.tsx';
import { makeShareLink, type WithToken } from './share.query.ts';

const NAMES: Readonly<Record<string, string>> = { label: strings.label, vesselIds: strings.what };
type Draft = {
  readonly label: string;
  readonly vesselIds: readonly string[] | null;
  readonly value: boolean;
  readonly days: number;
};

/** `vessel`: the one that is to be shown, where somebody came from her page. */
export function NewShareForm({ vessel, onMade }: { vessel: string | undefined; onMade: (link: WithToken) => void }) {
  const atFirst: Draft = { label: '', vesselIds: vessel ? [vessel] : null, value: false, days: 30 };
  const [draft, setDraft] = useState(atFirst);
  const [faults, setFaults] = useState<GrantFaults>(NO_GRANT_FAULTS);
  const queries = useQueryClient();
  const keyFor = useOnceKey();
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    const missing = missingFrom(draft);
    if (missing) return setFaults(missing);
    try {
      onMade(await makeShareLink(bodyOf(draft), keyFor(draft)));
      setDraft(atFirst);
      setFaults(NO_GRANT_FAULTS);
      await queries.invalidateQueries({ queryKey: ['share-links'] });
    } catch (error) {
      setFaults(grantFaults(error));
    }
  };
  return (
    <section aria-labelledby="new-share" className="new-share">
      <h2 id="new-share">{strings.new}</h2>
      <form className="form" onSubmit={submit} noValidate>
        <FaultSummary
          heading={strings.notDone}
          why={strings.notDoneWhy}
          faults={Object.entries(faults.at).map(([key, fault]) => ({
            id: `share-${key}`,
            name: NAMES[key] ?? key,
            fault,
          }))}
          others={faults.others}
        />
        <TextField
          id="share-label"
          name={strings.label}
          help={strings.labelHelp}
          value={draft.label}
          fault={faults.at['label']}
          onChange={(label) => setDraft({ ...draft, label })}
        />
        <Which draft={draft} fault={faults.at['vesselIds']} onChange={setDraft} />
        <label className="tick">
          <input
            type="checkbox"
            checked={draft.value}
            onChange={(event) => setDraft({ ...draft, value: event.currentTarget.checked })}
          />
          {strings.value}
        </label>
        <ChoiceField
          id="share-days"
          name={strings.endsAfter}
          value={String(draft.days)}
          onChange={(days) => setDraft({ ...draft, days: Number(days) })}
          short
        >
          {Object.entries(strings.terms).map(([value, words]) => (
            <option key={value} value={value}>
              {words}
            </option>
          ))}
        </ChoiceField>
        <p className="acts">
          <button type="submit">{strings.make}</button>
        </p>
      </form>
    </section>
  );
}

function missingFrom({ label, vesselIds }: Draft): GrantFaults | null {
  const at = {
    ...(label.trim() === '' && { label: doors.needed }),
    ...(vesselIds?.length === 0 && { vesselIds: strings.noVessel }),
  };
  return Object.keys(at).length > 0 ? { at, others: [] } : null;
}

const bodyOf = ({ label, vesselIds, value, days }: Draft) => ({
  label: label.trim(),
  showsValue: value,
  expiresAt: endAfter(days),
  ...(vesselIds && { vesselIds: [...vesselIds] }),
});

function Which(props: { draft: Draft; fault: string | undefined; onChange: (draft: Draft) => void }) {
  const { draft, fault, onChange } = props;
  const { data: vessels = [] } = useQuery(vesselNamesQuery());
  const chosen = draft.vesselIds;
  const turn = (id: string) =>
    onChange({
      ...draft,
      vesselIds: chosen?.includes(id) ? chosen.filter((each) => each !== id) : [...(chosen ?? []), id],
    });
  return (
    <fieldset className="plain" id="share-vesselIds" tabIndex={-1} aria-describedby="share-vesselIds-fault">
      <legend className="field-name">{strings.what}</legend>
      {([null, []] as const).map((vesselIds) => (
        <label key={String(vesselIds)} className="tick">
          <input
            type="radio"
            name="share-which"
            checked={(chosen === null) === (vesselIds === null)}
            onChange={() => onChange({ ...draft, vesselIds })}
          />
          {vesselIds === null ? strings.all : strings.only}
        </label>
      ))}
      {chosen && (
        <div className="ticks">
          {vessels.map(({ id, name }) => (
            <label key={id} className="tick">
              <input type="checkbox" checked={chosen.includes(id)} onChange={() => turn(id)} />
              {name}
            </label>
          ))}
        </div>
      )}
      <p id="share-vesselIds-fault" className={fault ? 'field-fault' : undefined}>
        {fault}
      </p>
    </fieldset>
  );
}
