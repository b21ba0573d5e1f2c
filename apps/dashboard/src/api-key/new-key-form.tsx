import { useQueryClient } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import { useOnceKey } from '../item/use-once-key.ts';
import { GRANT_NAMES, GrantFields } from '../organisation/grant-fields.tsx';
import type { Granted } from '../organisation/people.query.ts';
import { strings } from '../strings/api-key.ts';
import { type BoxFaults, boxFaults, missingFrom, NO_BOX_FAULTS } from '../ui/box-faults.ts';
import { BoxSummary } from '../ui/box-summary.tsx';
import { endAfter } from '../ui/calendar.ts';
import { TextField } from '../ui/fields.tsx';
import { TermField } from '../ui/term-field.tsx';
import { ActsField } from './acts-field.tsx';
import { makeApiKey, type NewApiKey, type WithText } from './api-key.query.ts';

const NAMES = { ...GRANT_NAMES, name: strings.name, permissions: strings.narrow, expiresAt: strings.endsAfter };
type Acts = NonNullable<NewApiKey['permissions']>;
/** The least is offered first. */
const AT_FIRST: { granted: Granted; acts: Acts | null; days: number; name: string } = {
  ...{ granted: { role: 'viewer', vesselIds: null }, acts: null, days: 90, name: '' },
};

export function NewKeyForm({ onMade }: { onMade: (key: WithText) => void }) {
  const [draft, setDraft] = useState(AT_FIRST);
  const [faults, setFaults] = useState<BoxFaults>(NO_BOX_FAULTS);
  const queries = useQueryClient();
  const keyFor = useOnceKey();
  const { granted, acts, days, name } = draft;
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    const missing = missingFrom({ name }, granted.vesselIds);
    if (missing) return setFaults(missing);
    try {
      onMade(await makeApiKey(bodyOf(draft), keyFor(draft)));
      setDraft(AT_FIRST);
      setFaults(NO_BOX_FAULTS);
      await queries.invalidateQueries({ queryKey: ['api-keys'] });
    } catch (error) {
      setFaults(boxFaults(error));
    }
  };
  return (
    <section aria-labelledby="new-key" className="new-key">
      <h2 id="new-key">{strings.new}</h2>
      <form className="form" onSubmit={submit} noValidate>
        <BoxSummary id="key" names={NAMES} faults={faults} />
        <TextField
          id="key-name"
          name={strings.name}
          help={strings.nameHelp}
          value={name}
          fault={faults.at['name']}
          onChange={(next) => setDraft({ ...draft, name: next })}
        />
        <GrantFields
          id="key"
          granted={granted}
          faults={faults.at}
          onChange={(next) => setDraft({ ...draft, granted: next, acts: null })}
        />
        <ActsField role={granted.role} acts={acts} onChange={(next) => setDraft({ ...draft, acts: next })} />
        <TermField
          id="key-expiresAt"
          name={strings.endsAfter}
          help={strings.endsAfterHelp}
          terms={strings.terms}
          value={days}
          onChange={(next) => setDraft({ ...draft, days: next })}
        />
        <p className="acts">
          <button type="submit">{strings.make}</button>
        </p>
      </form>
    </section>
  );
}

function bodyOf({ granted: { role, vesselIds }, acts, days, name }: typeof AT_FIRST): NewApiKey {
  return {
    ...{ name: name.trim(), role, expiresAt: endAfter(days) },
    ...(vesselIds && { vesselIds: [...vesselIds] }),
    ...(acts && { permissions: acts }),
  };
}
