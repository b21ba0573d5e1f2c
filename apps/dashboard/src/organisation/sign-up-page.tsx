import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { doors } from '../strings/doors.ts';
import { QuickForm } from '../ui/quick-form.tsx';
import { faultOf, knock } from './door.ts';
import { LetterSent } from './letter-sent.tsx';
import { Outside } from './outside.tsx';

const { signUp } = doors;

export function SignUpPage() {
  const [sentTo, setSentTo] = useState<string>();
  const submit = async ({ name = '', email = '', password = '' }) => {
    const answered = await knock('/sign-up/email', { name: name.trim(), email: email.trim(), password });
    if (!answered.ok) return faultOf(answered.code);
    setSentTo(email.trim());
    return null;
  };
  if (sentTo) return <LetterSent title={signUp.done} how={signUp.doneHow(sentTo)} />;
  return (
    <Outside title={signUp.title} how={signUp.how}>
      <QuickForm
        id="sign-up"
        submit={signUp.submit}
        onSubmit={submit}
        boxes={[
          { key: 'name', name: doors.name, help: doors.nameHelp, fill: 'name' },
          { key: 'email', name: doors.email, kind: 'email', fill: 'username' },
          { key: 'password', name: doors.password, help: doors.passwordHelp, kind: 'secret', fill: 'new-password' },
        ]}
      />
      <ul className="ways">
        <li>
          <Link to="/">{signUp.signIn}</Link>
        </li>
      </ul>
    </Outside>
  );
}
