import { useQueryClient } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import { useOnceKey } from '../item/use-once-key.ts';
import { people as words } from '../strings/people.ts';
import { type BoxFaults, boxFaults, missingFrom, NO_BOX_FAULTS } from '../ui/box-faults.ts';
import { BoxSummary } from '../ui/box-summary.tsx';
import { TextField } from '../ui/fields.tsx';
import { GRANT_NAMES, GrantFields } from './grant-fields.tsx';
import { changePerson, type Granted, type Person, removePerson } from './people.query.ts';

type Props = { person: Person; name: string; onDone: (told?: string) => void };

/** What somebody may do from now on, or that they may do nothing here any more. */
export function ChangePerson({ person, name, onDone }: Props) {
  const [granted, setGranted] = useState<Granted>({ role: person.role, vesselIds: person.vesselIds ?? null });
  const [faults, setFaults] = useState<BoxFaults>(NO_BOX_FAULTS);
  const keyFor = useOnceKey();
  const doing = useDoing(setFaults);
  const id = `person-${person.id}`;
  const save = (event: FormEvent) => {
    event.preventDefault();
    const missing = missingFrom({}, granted.vesselIds);
    if (missing) return setFaults(missing);
    return doing(() =>
      changePerson(person, granted, keyFor([person.version, granted])).then(() => onDone(words.changed(name))),
    );
  };
  return (
    <>
      <form className="form" onSubmit={save} noValidate>
        <BoxSummary id={id} names={GRANT_NAMES} faults={faults} />
        <GrantFields id={id} granted={granted} faults={faults.at} onChange={setGranted} />
        <p className="acts">
          <button type="submit" className="first">
            {words.save}
          </button>
          <button type="button" onClick={() => onDone()}>
            {words.leaveAsIs}
          </button>
        </p>
      </form>
      <Remove person={person} name={name} onDone={onDone} />
    </>
  );
}

function Remove({ person, name, onDone }: Props) {
  const [reason, setReason] = useState('');
  const [faults, setFaults] = useState<BoxFaults>(NO_BOX_FAULTS);
  const keyFor = useOnceKey();
  const doing = useDoing(setFaults);
  const id = `removal-${person.id}`;
  const remove = (event: FormEvent) => {
    event.preventDefault();
    const missing = missingFrom({ reason });
    if (missing) return setFaults(missing);
    return doing(() =>
      removePerson(person, reason.trim(), keyFor([person.version, reason])).then(() => onDone(words.removed(name))),
    );
  };
  return (
    <details className="removal">
      <summary>{words.remove} …</summary>
      <p className="quiet">{words.removeHow(name)}</p>
      <form className="form" onSubmit={remove} noValidate>
        <BoxSummary id={id} names={{ reason: words.reason }} faults={faults} />
        <TextField
          id={`${id}-reason`}
          name={words.reason}
          value={reason}
          fault={faults.at['reason']}
          onChange={setReason}
        />
        <p className="acts">
          <button type="submit">{words.remove}</button>
        </p>
      </form>
    </details>
  );
}

/** Read anew either way: where somebody else was quicker, the list shows what they did. */
function useDoing(setFaults: (faults: BoxFaults) => void) {
  const queries = useQueryClient();
  return async (act: () => Promise<unknown>) => {
    try {
      await act();
    } catch (error) {
      setFaults(boxFaults(error));
    }
    await queries.invalidateQueries({
      predicate: ({ queryKey }) => ['people', 'session'].includes(String(queryKey[0])),
    });
  };
}
