import { getRouteApi, Link } from '@tanstack/react-router';
import { useState } from 'react';
import { doors } from '../strings/doors.ts';
import { QuickForm } from '../ui/quick-form.tsx';
import { faultOf, knock } from './door.ts';
import { Outside } from './outside.tsx';

const route = getRouteApi('/new-password/$token');
const { reset } = doors;

export function NewPasswordPage() {
  const { token } = route.useParams();
  const [done, setDone] = useState(false);
  const submit = async ({ password = '' }) => {
    const answered = await knock('/reset-password', { token, newPassword: password });
    if (!answered.ok) return faultOf(answered.code);
    setDone(true);
    return null;
  };
  if (done)
    return (
      <Outside title={reset.title} how={reset.done}>
        <Link to="/" className="button first">
          {doors.signIn.submit}
        </Link>
      </Outside>
    );
  return (
    <Outside title={reset.title} how={reset.how}>
      <QuickForm
        id="reset"
        submit={reset.submit}
        onSubmit={submit}
        boxes={[
          {
            key: 'password',
            name: doors.newPassword,
            help: doors.passwordHelp,
            kind: 'secret',
            fill: 'new-password',
          },
        ]}
      />
    </Outside>
  );
}
