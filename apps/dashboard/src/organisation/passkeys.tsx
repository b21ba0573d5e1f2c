import { type PublicKeyCredentialCreationOptionsJSON, startRegistration } from '@simplewebauthn/browser';
import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { account } from '../strings/account.ts';
import { formatDay } from '../ui/calendar.ts';
import { type FormFault, QuickForm } from '../ui/quick-form.tsx';
import type { Account } from './account.query.ts';
import { faultOf, knock } from './door.ts';

const { passkeys: words } = account;

export function Passkeys({ passkeys }: { passkeys: Account['passkeys'] }) {
  const queries = useQueryClient();
  const readAnew = () => queries.invalidateQueries({ queryKey: ['account'] });
  const [formOf, setFormOf] = useState(0);
  const add = async ({ name = '' }) => {
    const fault = await register(name.trim());
    if (fault) return fault;
    setFormOf(formOf + 1);
    await readAnew();
    return null;
  };
  return (
    <>
      {passkeys.length === 0 && <p>{words.none}</p>}
      <ul className="rows">
        {passkeys.map((passkey) => (
          <Line key={passkey.id} passkey={passkey} onGone={readAnew} />
        ))}
      </ul>
      <details>
        <summary>{words.add}</summary>
        <QuickForm
          key={formOf}
          id="passkey"
          quiet
          submit={words.add}
          onSubmit={add}
          boxes={[{ key: 'name', name: words.name, help: words.nameHelp }]}
        />
      </details>
    </>
  );
}

function Line({ passkey, onGone }: { passkey: Account['passkeys'][number]; onGone: () => Promise<unknown> }) {
  const [fault, setFault] = useState<FormFault>();
  const { id, name = words.unnamed, createdAt } = passkey;
  const remove = async () => {
    const answered = await knock('/passkey/delete-passkey', { id });
    if (answered.ok) await onGone();
    else setFault(faultOf(answered.code));
  };
  return (
    <li>
      <div>
        <strong>{name}</strong>{' '}
        {createdAt && <span className="quiet">{words.added(formatDay(createdAt.slice(0, 10)))}</span>}
        <p role="status">{fault?.words}</p>
      </div>
      <button type="button" aria-label={words.removeOf(name)} onClick={remove}>
        {words.remove}
      </button>
    </li>
  );
}

/** `null`: the device has one now. */
async function register(name: string): Promise<FormFault | null> {
  const options = await knock('/passkey/generate-register-options');
  if (!options.ok) return faultOf(options.code);
  try {
    const response = await startRegistration({
      optionsJSON: options.body as unknown as PublicKeyCredentialCreationOptionsJSON,
    });
    const answered = await knock('/passkey/verify-registration', { response, name });
    return answered.ok ? null : faultOf(answered.code);
  } catch {
    return { words: words.left };
  }
}
