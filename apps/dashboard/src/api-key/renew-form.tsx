import { useQueryClient } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import { useOnceKey } from '../item/use-once-key.ts';
import { useTrying } from '../organisation/use-trying.ts';
import { strings } from '../strings/api-key.ts';
import { endAfter } from '../ui/calendar.ts';
import { TermField } from '../ui/term-field.tsx';
import { type ApiKey, renewApiKey, type WithText } from './api-key.query.ts';

type Props = { apiKey: ApiKey; onShown: (key: WithText) => void; onLeave: () => void };

export function RenewForm({ apiKey, onShown, onLeave }: Props) {
  const [hours, setHours] = useState(24);
  const [days, setDays] = useState(90);
  const queries = useQueryClient();
  const keyFor = useOnceKey();
  const { trying, fault, busy } = useTrying();
  const submit = (event: FormEvent) => {
    event.preventDefault();
    void trying(async () => {
      const renewal = { overlapHours: hours, expiresAt: endAfter(days) };
      onShown(await renewApiKey(apiKey, renewal, keyFor([apiKey.version, hours, days])));
      onLeave();
      await queries.invalidateQueries({ queryKey: ['api-keys'] });
    });
  };
  return (
    <form className="form" onSubmit={submit}>
      <p>{strings.renewHow}</p>
      <TermField
        id={`overlap-${apiKey.id}`}
        name={strings.overlap}
        terms={strings.overlaps}
        value={hours}
        onChange={setHours}
      />
      <TermField
        id={`term-${apiKey.id}`}
        name={strings.endsAfter}
        help={strings.endsAfterHelp}
        terms={strings.terms}
        value={days}
        onChange={setDays}
      />
      <p role="alert">{fault}</p>
      <p className="acts">
        <button type="submit" className="first" disabled={busy}>
          {strings.renew}
        </button>
        <button type="button" onClick={onLeave}>
          {strings.leave}
        </button>
      </p>
    </form>
  );
}
