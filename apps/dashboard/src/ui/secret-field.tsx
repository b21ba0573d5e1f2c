/** A box for a secret, hidden until asked to be shown: a long password typed unseen is typed wrong. */
import { useState } from 'react';
import { form } from '../strings/form.ts';
import { TextField } from './fields.tsx';

type Props = Omit<Parameters<typeof TextField>[0], 'type' | 'beside' | 'inputMode'>;

export function SecretField(props: Props) {
  const [shown, setShown] = useState(false);
  return (
    <div className="secret-field">
      <TextField {...props} type={shown ? 'text' : 'password'} />
      <button
        type="button"
        className="word"
        aria-label={`${shown ? form.hide : form.show}: ${props.name}`}
        onClick={() => setShown(!shown)}
      >
        {shown ? form.hide : form.show}
      </button>
    </div>
  );
}
