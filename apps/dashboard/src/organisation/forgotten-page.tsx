import { useState } from 'react';
import { doors } from '../strings/doors.ts';
import { QuickForm } from '../ui/quick-form.tsx';
import { faultOf, knock } from './door.ts';
import { LetterSent } from './letter-sent.tsx';
import { Outside } from './outside.tsx';

const { forgotten } = doors;

export function ForgottenPage() {
  const [sentTo, setSentTo] = useState<string>();
  const submit = async ({ email = '' }) => {
    const answered = await knock('/request-password-reset', { email: email.trim() });
    if (!answered.ok) return faultOf(answered.code);
    setSentTo(email.trim());
    return null;
  };
  if (sentTo) return <LetterSent title={forgotten.done} how={forgotten.doneHow(sentTo)} />;
  return (
    <Outside title={forgotten.title} how={forgotten.how}>
      <QuickForm
        id="forgotten"
        submit={forgotten.submit}
        onSubmit={submit}
        boxes={[{ key: 'email', name: doors.email, kind: 'email', fill: 'username' }]}
      />
    </Outside>
  );
}
