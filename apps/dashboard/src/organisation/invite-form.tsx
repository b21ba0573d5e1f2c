import { useQueryClient } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import { useOnceKey } from '../item/use-once-key.ts';
import { doors } from '../strings/doors.ts';
import { people as words } from '../strings/people.ts';
import { type BoxFaults, boxFaults, missingFrom, NO_BOX_FAULTS } from '../ui/box-faults.ts';
import { BoxSummary } from '../ui/box-summary.tsx';
import { TextField } from '../ui/fields.tsx';
import { GRANT_NAMES, GrantFields } from './grant-fields.tsx';
import { type Granted, invite } from './people.query.ts';

/** The least is offered first. */
const AT_FIRST: Granted = { role: 'viewer', vesselIds: null };

export function InviteForm({ onTold }: { onTold: (words: string) => void }) {
  const [email, setEmail] = useState('');
  const [granted, setGranted] = useState(AT_FIRST);
  const [faults, setFaults] = useState<BoxFaults>(NO_BOX_FAULTS);
  const queries = useQueryClient();
  const keyFor = useOnceKey();
  const send = async (event: FormEvent) => {
    event.preventDefault();
    const missing = missingFrom({ email }, granted.vesselIds);
    if (missing) return setFaults(missing);
    try {
      const { mailed } = await invite(email.trim(), granted, keyFor([email, granted]));
      onTold(mailed === false ? words.notSent(email.trim()) : words.sent(email.trim()));
      setEmail('');
      setGranted(AT_FIRST);
      setFaults(NO_BOX_FAULTS);
      await queries.invalidateQueries({ queryKey: ['invitations'] });
    } catch (error) {
      setFaults(boxFaults(error));
    }
  };
  return (
    <form className="form" onSubmit={send} noValidate>
      <BoxSummary id="invite" names={{ ...GRANT_NAMES, email: doors.email }} faults={faults} />
      <TextField
        id="invite-email"
        name={doors.email}
        type="email"
        value={email}
        fault={faults.at['email']}
        onChange={setEmail}
      />
      <GrantFields id="invite" granted={granted} faults={faults.at} onChange={setGranted} />
      <p className="acts">
        <button type="submit">{words.send}</button>
      </p>
    </form>
  );
}
