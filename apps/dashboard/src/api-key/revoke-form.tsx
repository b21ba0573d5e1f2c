import { useQueryClient } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import { useOnceKey } from '../item/use-once-key.ts';
import { useTrying } from '../organisation/use-trying.ts';
import { strings } from '../strings/api-key.ts';
import { TextField } from '../ui/fields.tsx';
import { type ApiKey, revokeApiKey } from './api-key.query.ts';

type Props = { apiKey: ApiKey; onTold: (words: string) => void; onLeave: () => void };

/** Asked for twice: it cannot be undone. */
export function RevokeForm({ apiKey, onTold, onLeave }: Props) {
  const [reason, setReason] = useState('');
  const queries = useQueryClient();
  const keyFor = useOnceKey();
  const { trying, fault, busy } = useTrying();
  const submit = (event: FormEvent) => {
    event.preventDefault();
    void trying(async () => {
      await revokeApiKey(apiKey, reason.trim(), keyFor([apiKey.version, reason]));
      onTold(strings.isRevoked(apiKey.name));
      onLeave();
      await queries.invalidateQueries({ queryKey: ['api-keys'] });
    });
  };
  return (
    <form className="form" onSubmit={submit}>
      <p>{strings.revokeHow}</p>
      <TextField id={`reason-${apiKey.id}`} name={strings.reason} value={reason} onChange={setReason} />
      <p role="alert">{fault}</p>
      <p className="acts">
        <button type="submit" className="first" disabled={busy}>
          {strings.revoke}
        </button>
        <button type="button" onClick={onLeave}>
          {strings.leave}
        </button>
      </p>
    </form>
  );
}
