import { useQueryClient } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import { useOnceKey } from '../item/use-once-key.ts';
import { doors, people as words } from '../strings/people.ts';
import { TextField } from '../ui/fields.tsx';
import { type GrantFaults, grantFaults, missingFrom, NO_GRANT_FAULTS } from './grant-faults.ts';
import { GrantFields } from './grant-fields.tsx';
import { GrantSummary } from './grant-summary.tsx';
import { type Granted, invite } from './people.query.ts';

/** The least is offered first. */
const AT_FIRST: Granted = { role: 'viewer', vesselIds: null };

export function InviteForm({ onTold }: { onTold: (words: string) => void }) {
  const [email, setEmail] = useState('');
  const [granted, setGranted] = useState(AT_FIRST);
  const [faults, setFaults] = useState<GrantFaults>(NO_GRANT_FAULTS);
  const queries = useQueryClient();
  const keyFor = useOnceKey();
  const send = async (event: FormEvent) => {
    event.preventDefault();
    const missing = missingFrom(granted, { email });
    if (missing) return setFaults(missing);
    try {
      const { mailed } = await invite(email.trim(), granted, keyFor([email, granted]));
      onTold(mailed === false ? words.notSent(email.trim()) : words.sent(email.trim()));
      setEmail('');
      setGranted(AT_FIRST);
      setFaults(NO_GRANT_FAULTS);
      await queries.invalidateQueries({ queryKey: ['invitations'] });
    } catch (error) {
      setFaults(grantFaults(error));
    }
  };
  return (
    <form className="form" onSubmit={send} noValidate>
      <GrantSummary id="invite" faults={faults} />
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
