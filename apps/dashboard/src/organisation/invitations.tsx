/** Inviting somebody, and the invitations that nobody has answered yet. */
import { useQuery, useQueryClient } from '@tanstack/react-query';
import { useOnceKey } from '../item/use-once-key.ts';
import { roleNames, people as words } from '../strings/people.ts';
import { formatInstant } from '../ui/calendar.ts';
import { InviteForm } from './invite-form.tsx';
import { type Invitation, invitationsQuery, withdrawInvitation } from './people.query.ts';
import { useTrying } from './use-trying.ts';

export function Invitations({ onTold }: { onTold: (words: string) => void }) {
  const { data = [] } = useQuery(invitationsQuery());
  const open = data.filter(({ withdrawnAt }) => !withdrawnAt);
  return (
    <section className="invitations" aria-labelledby="invite">
      <h2 id="invite">{words.invite}</h2>
      <p className="quiet narrow">{words.inviteHow}</p>
      <InviteForm onTold={onTold} />
      {open.length > 0 && <h3>{words.pending}</h3>}
      <ul className="rows">
        {open.map((invitation) => (
          <Line key={invitation.id} invitation={invitation} onTold={onTold} />
        ))}
      </ul>
    </section>
  );
}

function Line({ invitation, onTold }: { invitation: Invitation; onTold: (words: string) => void }) {
  const queries = useQueryClient();
  const keyFor = useOnceKey();
  const { trying, fault } = useTrying();
  const { email = '', role, expiresAt } = invitation;
  const ends = Date.parse(expiresAt);
  const withdraw = () =>
    trying(async () => {
      await withdrawInvitation(invitation, keyFor(invitation.version));
      onTold(words.withdrawn);
      await queries.invalidateQueries({ queryKey: ['invitations'] });
    });
  return (
    <li>
      <div>
        <strong>{email}</strong>{' '}
        <span className="quiet">
          {roleNames[role]}, {ends > Date.now() ? words.until(formatInstant(ends)) : words.over}
        </span>
        <p role="status">{fault}</p>
      </div>
      <button type="button" aria-label={words.withdrawOf(email)} onClick={withdraw}>
        {words.withdraw}
      </button>
    </li>
  );
}
