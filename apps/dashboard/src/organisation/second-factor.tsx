/** Turning the second factor on: password, square code, first code, recovery codes; and off again. */
import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { account } from '../strings/account.ts';
import { doors } from '../strings/doors.ts';
import { QuickForm } from '../ui/quick-form.tsx';
import { faultOf, knock } from './door.ts';
import { SquareCode } from './square-code.tsx';

const { second: words } = account;
const PASSWORD = { key: 'current', name: doors.password, kind: 'secret', fill: 'current-password' } as const;

type Begun = { readonly uri: string; readonly codes: readonly string[] };
type State = { readonly at: 'rest' } | ({ readonly at: 'scanning' } & Begun) | ({ readonly at: 'keeping' } & Begun);

export function SecondFactor({ isOn, hasPassword }: { isOn: boolean; hasPassword: boolean }) {
  const [state, setState] = useState<State>({ at: 'rest' });
  const queries = useQueryClient();
  const readAnew = () => queries.invalidateQueries({ queryKey: ['account'] });
  switch (state.at) {
    case 'scanning':
      return <Scan begun={state} onProven={() => setState({ ...state, at: 'keeping' })} />;
    case 'keeping':
      return (
        <Keep
          codes={state.codes}
          onKept={() => {
            setState({ at: 'rest' });
            void readAnew();
          }}
        />
      );
    case 'rest':
      return (
        <>
          <p>{isOn ? words.on : words.off}</p>
          {!hasPassword && <p className="quiet">{words.needsPassword}</p>}
          {hasPassword &&
            (isOn ? <Stop onDone={readAnew} /> : <Start onBegun={(begun) => setState({ ...begun, at: 'scanning' })} />)}
        </>
      );
  }
}

function Start({ onBegun }: { onBegun: (begun: Begun) => void }) {
  const start = async ({ current = '' }) => {
    const answered = await knock('/two-factor/enable', { password: current });
    if (!answered.ok) return faultOf(answered.code);
    const { totpURI, backupCodes } = answered.body;
    onBegun({ uri: String(totpURI), codes: Array.isArray(backupCodes) ? backupCodes.map(String) : [] });
    return null;
  };
  return (
    <details>
      <summary>{words.start}</summary>
      <QuickForm id="factor" quiet submit={words.start} onSubmit={start} boxes={[PASSWORD]} />
    </details>
  );
}

function Scan({ begun, onProven }: { begun: Begun; onProven: () => void }) {
  const prove = async ({ code = '' }) => {
    const answered = await knock('/two-factor/verify-totp', { code: code.replaceAll(' ', '') });
    if (!answered.ok) return faultOf(answered.code);
    onProven();
    return null;
  };
  const secret = new URL(begun.uri).searchParams.get('secret') ?? '';
  return (
    <>
      <p>{words.scan}</p>
      <SquareCode text={begun.uri} name={words.picture} />
      <p>
        <span className="quiet">{words.secret}</span> <code>{secret.replace(/(.{4})(?=.)/g, '$1 ')}</code>
      </p>
      <QuickForm
        id="prove"
        submit={words.confirm}
        onSubmit={prove}
        boxes={[{ key: 'code', name: words.code, kind: 'code', fill: 'one-time-code' }]}
      />
    </>
  );
}

function Keep({ codes, onKept }: { codes: readonly string[]; onKept: () => void }) {
  return (
    <>
      <h3>{words.codes}</h3>
      <p>{words.codesHow}</p>
      <ul className="recovery-codes">
        {codes.map((code) => (
          <li key={code}>
            <code>{code}</code>
          </li>
        ))}
      </ul>
      <button type="button" className="first" onClick={onKept}>
        {words.kept}
      </button>
    </>
  );
}

function Stop({ onDone }: { onDone: () => Promise<unknown> }) {
  const stop = async ({ current = '' }) => {
    const answered = await knock('/two-factor/disable', { password: current });
    if (!answered.ok) return faultOf(answered.code);
    await onDone();
    return null;
  };
  return (
    <details>
      <summary>{words.stop}</summary>
      <QuickForm id="stop-factor" quiet submit={words.stop} onSubmit={stop} boxes={[PASSWORD]} />
    </details>
  );
}
