/** A short form of named boxes: says all faults at its head and at each box, and keeps what was typed. */
import { type FormEvent, type ReactNode, useState } from 'react';
import { form } from '../strings/form.ts';
import { FaultSummary } from './fault-summary.tsx';
import { TextField } from './fields.tsx';
import { SecretField } from './secret-field.tsx';

export type FormFault = { readonly at?: string; readonly words: string };
export type Box = {
  readonly key: string;
  readonly name: string;
  readonly help?: string;
  readonly kind?: 'secret' | 'email' | 'code';
  /** What a browser may fill in: a token of HTML's `autocomplete`. */
  readonly fill?: string;
  readonly start?: string;
  readonly optional?: true;
};
type Typed = Readonly<Record<string, string>>;

export function QuickForm(props: {
  /** Begins every box's id. */
  id: string;
  boxes: readonly Box[];
  submit: string;
  /** `null`: it is done. */
  onSubmit: (typed: Typed) => Promise<FormFault | null>;
  quiet?: boolean;
  children?: ReactNode;
}) {
  const { id, boxes, submit, onSubmit } = props;
  const [typed, setTyped] = useState<Typed>(() => Object.fromEntries(boxes.map(({ key, start = '' }) => [key, start])));
  const [faults, setFaults] = useState<readonly FormFault[]>([]);
  const [busy, setBusy] = useState(false);
  const send = async (event: FormEvent) => {
    event.preventDefault();
    const missing = boxes.filter(({ key, optional }) => !optional && typed[key]?.trim() === '');
    if (missing.length > 0) return setFaults(missing.map(({ key }) => ({ at: key, words: form.needed })));
    setBusy(true);
    const fault = await onSubmit(typed);
    setBusy(false);
    setFaults(fault ? [fault] : []);
  };
  const faultAt = (key: string) => faults.find(({ at }) => at === key)?.words;
  const named = boxes.flatMap(({ key, name }) => {
    const fault = faultAt(key);
    return fault ? [{ id: `${id}-${key}`, name, fault }] : [];
  });
  const others = faults.filter(({ at }) => !boxes.some(({ key }) => key === at)).map(({ words }) => words);
  return (
    <form className="form" onSubmit={send} noValidate>
      <FaultSummary heading={form.notYet} why={form.notYetWhy} faults={named} others={others} />
      {boxes.map(({ key, kind, name, help, fill }) => {
        const shared = { id: `${id}-${key}`, name, help, fill, fault: faultAt(key), value: typed[key] ?? '' };
        const onChange = (value: string) => setTyped({ ...typed, [key]: value });
        return kind === 'secret' ? (
          <SecretField key={key} {...shared} onChange={onChange} />
        ) : (
          <TextField key={key} {...shared} {...(kind && INPUT[kind])} onChange={onChange} />
        );
      })}
      <p className="acts">
        <button type="submit" className={props.quiet ? undefined : 'first'} disabled={busy}>
          {busy ? form.busy : submit}
        </button>
        {props.children}
      </p>
    </form>
  );
}

const INPUT = { email: { type: 'email' }, code: { inputMode: 'numeric', short: true } } as const;
