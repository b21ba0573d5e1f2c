import { useQueryClient } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import { useOnceKey } from '../item/use-once-key.ts';
import { strings } from '../strings/share.ts';
import { type BoxFaults, boxFaults, missingFrom, NO_BOX_FAULTS } from '../ui/box-faults.ts';
import { BoxSummary } from '../ui/box-summary.tsx';
import { endAfter } from '../ui/calendar.ts';
import { ChoiceField, TextField } from '../ui/fields.tsx';
import { TermField } from '../ui/term-field.tsx';
import { WhichVessels } from '../vessel/which-vessels.tsx';
import { makeShareLink, type ShareLink, type WithToken } from './share.query.ts';
import { WhichWork } from './which-work.tsx';

type Purpose = ShareLink['purpose'];

const NAMES = { label: strings.label, vesselIds: strings.what, findingIds: strings.work };
type Draft = {
  readonly purpose: Purpose;
  readonly findingIds: readonly string[];
  readonly label: string;
  readonly vesselIds: readonly string[] | null;
  readonly value: boolean;
  readonly days: number;
};

/** `vessel`: the one that is to be shown, where somebody came from her page. */
export function NewShareForm({ vessel, onMade }: { vessel: string | undefined; onMade: (link: WithToken) => void }) {
  const atFirst: Draft = {
    purpose: 'look',
    findingIds: [],
    label: '',
    vesselIds: vessel ? [vessel] : null,
    value: false,
    days: 30,
  };
  const [draft, setDraft] = useState(atFirst);
  const [faults, setFaults] = useState<BoxFaults>(NO_BOX_FAULTS);
  const queries = useQueryClient();
  const keyFor = useOnceKey();
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    const missing = missingFrom({ label: draft.label }, draft.purpose === 'yard' ? null : draft.vesselIds);
    if (missing) return setFaults(missing);
    try {
      onMade(await makeShareLink(bodyOf(draft), keyFor(draft)));
      setDraft(atFirst);
      setFaults(NO_BOX_FAULTS);
      await queries.invalidateQueries({ queryKey: ['share-links'] });
    } catch (error) {
      setFaults(boxFaults(error));
    }
  };
  return (
    <section aria-labelledby="new-share" className="new-share">
      <h2 id="new-share">{strings.new}</h2>
      <form className="form" onSubmit={submit} noValidate>
        <BoxSummary id="share" names={NAMES} faults={faults} />
        <TextField
          id="share-label"
          name={strings.label}
          help={strings.labelHelp}
          value={draft.label}
          fault={faults.at['label']}
          onChange={(label) => setDraft({ ...draft, label })}
        />
        <ChoiceField
          id="share-purpose"
          name={strings.purpose}
          value={draft.purpose}
          onChange={(purpose) => setDraft({ ...draft, purpose: purpose as Purpose })}
        >
          {Object.entries(strings.purposes).map(([purpose, words]) => (
            <option key={purpose} value={purpose}>
              {words}
            </option>
          ))}
        </ChoiceField>
        {draft.purpose === 'yard' ? (
          <WhichWork
            chosen={draft.findingIds}
            fault={faults.at['findingIds']}
            onChange={(findingIds) => setDraft({ ...draft, findingIds })}
          />
        ) : (
          <WhichVessels
            id="share-vesselIds"
            words={{ legend: strings.what, all: strings.all, only: strings.only }}
            chosen={draft.vesselIds}
            fault={faults.at['vesselIds']}
            onChange={(vesselIds) => setDraft({ ...draft, vesselIds })}
          />
        )}
        <label className="tick">
          <input
            type="checkbox"
            checked={draft.value}
            onChange={(event) => setDraft({ ...draft, value: event.currentTarget.checked })}
          />
          {strings.value}
        </label>
        <TermField
          id="share-days"
          name={strings.endsAfter}
          terms={strings.terms}
          value={draft.days}
          onChange={(days) => setDraft({ ...draft, days })}
        />
        <p className="acts">
          <button type="submit">{strings.make}</button>
        </p>
      </form>
    </section>
  );
}

const bodyOf = ({ purpose, findingIds, label, vesselIds, value, days }: Draft) => ({
  purpose,
  label: label.trim(),
  showsValue: value,
  expiresAt: endAfter(days),
  ...(purpose === 'yard'
    ? findingIds.length > 0 && { findingIds: [...findingIds] }
    : vesselIds && { vesselIds: [...vesselIds] }),
});
