/** Signing in, at any address that wants somebody: the page that was asked for follows. */
import { type PublicKeyCredentialRequestOptionsJSON, startAuthentication } from '@simplewebauthn/browser';
import { Link } from '@tanstack/react-router';
import { type ReactNode, useState } from 'react';
import { doors } from '../strings/doors.ts';
import { type FormFault, QuickForm } from '../ui/quick-form.tsx';
import { faultOf, knock } from './door.ts';
import { Outside } from './outside.tsx';
import { SecondStep } from './second-step.tsx';
import { useComeIn } from './use-come-in.ts';

const { signIn } = doors;

export function SignInPage({ title = signIn.title, before }: { title?: string; before?: ReactNode }) {
  const [second, setSecond] = useState(false);
  if (second) return <SecondStep onBack={() => setSecond(false)} />;
  return (
    <Outside title={title} how={before}>
      <SignIn onSecond={() => setSecond(true)} />
      <Passkey />
      <ul className="ways">
        <li>
          <Link to="/forgotten">{signIn.forgotten}</Link>
        </li>
        <li>
          <Link to="/sign-up">{signIn.signUp}</Link>
        </li>
      </ul>
      <p className="quiet narrow">{signIn.link}</p>
    </Outside>
  );
}

function SignIn({ onSecond }: { onSecond: () => void }) {
  const comeIn = useComeIn();
  const submit = async ({ email = '', password = '' }) => {
    const answered = await knock('/sign-in/email', { email: email.trim(), password });
    if (!answered.ok) return faultOf(answered.code);
    if (answered.body['twoFactorRedirect'] === true) onSecond();
    else await comeIn();
    return null;
  };
  return (
    <QuickForm
      id="sign-in"
      submit={signIn.submit}
      onSubmit={submit}
      boxes={[
        { key: 'email', name: doors.email, kind: 'email', fill: 'username' },
        { key: 'password', name: doors.password, kind: 'secret', fill: 'current-password' },
      ]}
    />
  );
}

function Passkey() {
  const comeIn = useComeIn();
  const [fault, setFault] = useState<FormFault | null>(null);
  const use = async () => {
    setFault(null);
    const told = await askDevice();
    setFault(told);
    if (!told) await comeIn();
  };
  return (
    <div className="way">
      <button type="button" onClick={use}>
        {signIn.passkey}
      </button>
      <p className="quiet">{signIn.passkeyHow}</p>
      <p role="status">{fault?.words}</p>
    </div>
  );
}

/** `null`: signed in. */
async function askDevice(): Promise<FormFault | null> {
  const options = await knock('/passkey/generate-authenticate-options');
  if (!options.ok) return faultOf(options.code);
  try {
    const response = await startAuthentication({
      optionsJSON: options.body as unknown as PublicKeyCredentialRequestOptionsJSON,
    });
    const answered = await knock('/passkey/verify-authentication', { response });
    return answered.ok ? null : faultOf(answered.code);
  } catch {
    return { words: signIn.passkeyLeft };
  }
}
