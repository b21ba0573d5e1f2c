import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { account } from '../strings/account.ts';
import { doors } from '../strings/doors.ts';
import { type Box, QuickForm } from '../ui/quick-form.tsx';
import { faultOf, knock } from './door.ts';

const { password: words } = account;
const CURRENT: Box = { key: 'current', name: words.current, kind: 'secret', fill: 'current-password' };
const NEXT: Box = {
  key: 'password',
  name: doors.newPassword,
  help: doors.passwordHelp,
  kind: 'secret',
  fill: 'new-password',
};

/** Sets the first password, or changes the one there is; a change signs the other devices out. */
export function PasswordSection({ hasPassword }: { hasPassword: boolean }) {
  const queries = useQueryClient();
  const [done, setDone] = useState<string>();
  const submit = async ({ current = '', password = '' }) => {
    const answered = hasPassword
      ? await knock('/change-password', {
          currentPassword: current,
          newPassword: password,
          revokeOtherSessions: true,
        })
      : await knock('/set-password', { newPassword: password });
    if (!answered.ok) return faultOf(answered.code);
    setDone(hasPassword ? words.done : words.doneSet);
    await queries.invalidateQueries({ queryKey: ['account'] });
    return null;
  };
  return (
    <>
      <p>{hasPassword ? words.has : words.none}</p>
      <details>
        <summary>{hasPassword ? words.change : words.set}</summary>
        <QuickForm
          key={String(hasPassword)}
          id="password"
          quiet
          submit={hasPassword ? words.change : words.set}
          onSubmit={submit}
          boxes={hasPassword ? [CURRENT, NEXT] : [NEXT]}
        />
      </details>
      <p role="status">{done}</p>
    </>
  );
}
