/** Signed in, and at no organisation: go to another, or found one. */
import { answer } from '@garboard/client/client.ts';
import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { api } from '../api/client.ts';
import { useOnceKey } from '../item/use-once-key.ts';
import { account } from '../strings/account.ts';
import { doors } from '../strings/doors.ts';
import { QuickForm } from '../ui/quick-form.tsx';
import { belongingsQuery, signOut } from './account.query.ts';
import { Belongings } from './belongings.tsx';
import { Outside } from './outside.tsx';
import { faultOrDone } from './problem-fault.ts';
import { useComeIn } from './use-come-in.ts';

const { nowhere } = doors;

export function Nowhere() {
  const { data: belongings = [] } = useQuery(belongingsQuery());
  const comeIn = useComeIn();
  const elsewhere = belongings.length > 0;
  return (
    <Outside title={elsewhere ? nowhere.elsewhere : nowhere.title} how={elsewhere ? nowhere.elsewhereHow : nowhere.how}>
      {elsewhere && <Belongings here={undefined} />}
      <h2>{nowhere.found}</h2>
      <Found />
      <ul className="ways">
        <li>
          <Link to="/account">{account.title}</Link>
        </li>
        <li>
          <button type="button" className="word" onClick={() => signOut().then(comeIn)}>
            {account.sessions.signOut}
          </button>
        </li>
      </ul>
    </Outside>
  );
}

/** Whoever founds it is its owner, and is there from then on. */
function Found() {
  const keyFor = useOnceKey();
  const comeIn = useComeIn();
  const found = ({ name = '', timeZone = '' }) =>
    faultOrDone(async () => {
      const body = { name: name.trim(), timeZone: timeZone.trim() };
      await answer(api.POST('/v1/organisations', { params: { header: { 'Idempotency-Key': keyFor(body) } }, body }));
      await comeIn();
    });
  return (
    <QuickForm
      id="found"
      submit={nowhere.submit}
      onSubmit={found}
      boxes={[
        { key: 'name', name: nowhere.name, fill: 'organization' },
        {
          key: 'timeZone',
          name: nowhere.timeZone,
          help: nowhere.timeZoneHelp,
          start: Intl.DateTimeFormat().resolvedOptions().timeZone,
        },
      ]}
    />
  );
}
