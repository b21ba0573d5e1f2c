import { useQueryClient } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import { useOnceKey } from '../item/use-once-key.ts';
import { type GrantFaults, grantFaults, missingFrom, NO_GRANT_FAULTS } from '../organisation/grant-faults.ts';
import { GrantFields } from '../organisation/grant-fields.tsx';
import type { Granted } from '../organisation/people.query.ts';
import { strings } from '../strings/api-key.ts';
import { people } from '../strings/people.ts';
import { FaultSummary } from '../ui/fault-summary.tsx';
import { TextField } from '../ui/fields.tsx';
import { ActsField } from './acts-field.tsx';
import { endAfter, makeApiKey, type NewApiKey, type WithText } from './api-key.query.ts';
import { TermField } from './term-field.tsx';

const NAMES: Readonly<Record<string, string>> = {
  name: strings.name,
  role: strings.role,
  permissions: strings.narrow,
  vesselIds: people.narrow,
  expiresAt: strings.endsAfter,
};
type Acts = NonNullable<NewApiKey['permissions']>;
/** The least is offered first. */
const AT_FIRST: { granted: Granted; acts: Acts | null; days: number; name: string } = {
  ...{ granted: { role: 'viewer', vesselIds: null }, acts: null, days: 90, name: '' },
};

export function NewKeyForm({ onMade }: { onMade: (key: WithText) => void }) {
  const [draft, setDraft] = useState(AT_FIRST);
  const [faults, setFaults] = useState<GrantFaults>(NO_GRANT_FAULTS);
  const queries = useQueryClient();
  const keyFor = useOnceKey();
  const { granted, acts, days, name } = draft;
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    const missing = missingFrom(granted, { name });
    if (missing) return setFaults(missing);
    try {
      onMade(await makeApiKey(bodyOf(draft), keyFor(draft)));
      setDraft(AT_FIRST);
      setFaults(NO_GRANT_FAULTS);
      await queries.invalidateQueries({ queryKey: ['api-keys'] });
    } catch (error) {
      setFaults(grantFaults(error));
    }
  };
  return (
    <section aria-labelledby="new-key" className="new-key">
      <h2 id="new-key">{strings.new}</h2>
      <form className="form" onSubmit={submit} noValidate>
        <FaultSummary
          heading={strings.notDone}
          why={strings.notDoneWhy}
          faults={Object.entries(faults.at).map(([key, fault]) => ({
            id: `key-${key}`,
            name: NAMES[key] ?? key,
            fault,
          }))}
          others={faults.others}
        />
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
        <TermField id="key-expiresAt" days={days} onChange={(next) => setDraft({ ...draft, days: next })} />
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
