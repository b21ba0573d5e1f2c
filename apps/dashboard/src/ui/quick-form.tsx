/** A short form of named boxes: says all faults at its head and at each box, and keeps what was typed. */
import { type FormEvent, type ReactNode, useState } from 'react';
import { form } from '../strings/form.ts';
import { DateField } from './date-field.tsx';
import { FaultSummary } from './fault-summary.tsx';
import { ChoiceField, LongField, TextField } from './fields.tsx';
import { SecretField } from './secret-field.tsx';

export type FormFault = { readonly at?: string; readonly words: string };
export type Box = {
  readonly key: string;
  readonly name: string;
  readonly help?: string;
  readonly kind?: 'own' | 'secret' | 'email' | 'code' | 'long' | 'day' | 'choice' | 'text';
  /** Of a choice: the words of each value; `''` for none. */
  readonly choices?: Readonly<Record<string, string>>;
  /** Shown only where this holds. */
  readonly when?: (typed: Typed) => boolean;
  /** What a browser may fill in: a token of HTML's `autocomplete`. */
  readonly fill?: string;
  readonly start?: string;
  /** Of `own`: a box that some subject brings itself. */
  readonly draw?: (box: DrawnBox) => ReactNode;
  readonly optional?: true;
};
export type DrawnBox = {
  readonly id: string;
  readonly name: string;
  readonly help?: string;
  readonly fault: string | undefined;
  readonly value: string;
  readonly onChange: (value: string) => void;
};
export type Typed = Readonly<Record<string, string>>;

export function QuickForm(props: {
  /** Begins every box's id. */
  id: string;
  boxes: readonly Box[];
  submit: string;
  /** `null`: it is done. */
  onSubmit: (typed: Typed) => Promise<FormFault | readonly FormFault[] | null>;
  quiet?: boolean;
  /** Told of everything that is typed. */
  onTyped?: (typed: Typed) => void;
  children?: ReactNode;
}) {
  const { id, submit, onSubmit } = props;
  const [typed, setTyped] = useState<Typed>(() =>
    Object.fromEntries(props.boxes.map(({ key, start = '' }) => [key, start])),
  );
  const [faults, setFaults] = useState<readonly FormFault[]>([]);
  const [busy, setBusy] = useState(false);
  const boxes = props.boxes.filter(({ when }) => when === undefined || when(typed));
  const send = async (event: FormEvent) => {
    event.preventDefault();
    const missing = boxes.filter(({ key, optional }) => !optional && typed[key]?.trim() === '');
    if (missing.length > 0) return setFaults(missing.map(({ key }) => ({ at: key, words: form.needed })));
    setBusy(true);
    const fault = await onSubmit(typed);
    setBusy(false);
    setFaults(fault ? [fault].flat() : []);
  };
  const type = (now: Typed) => {
    setTyped(now);
    props.onTyped?.(now);
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
      {boxes.map((box) => (
        <BoxField
          key={box.key}
          box={box}
          id={`${id}-${box.key}`}
          fault={faultAt(box.key)}
          value={typed[box.key] ?? ''}
          onChange={(value) => type({ ...typed, [box.key]: value })}
        />
      ))}
      <p className="acts">
        <button type="submit" className={props.quiet ? undefined : 'first'} disabled={busy}>
          {busy ? form.busy : submit}
        </button>
        {props.children}
      </p>
    </form>
  );
}

type FieldProps = { box: Box; id: string; fault: string | undefined; value: string; onChange: (value: string) => void };

function BoxField({ box: { kind = 'text', name, help, fill, choices = {}, draw }, ...field }: FieldProps) {
  const shared = { ...field, name, ...(help !== undefined && { help }) };
  switch (kind) {
    case 'own':
      return draw?.(shared) ?? null;
    case 'secret':
      return <SecretField {...shared} fill={fill} />;
    case 'long':
      return <LongField {...shared} />;
    case 'day':
      return <DateField {...shared} />;
    case 'choice':
      return (
        <ChoiceField {...shared}>
          {Object.entries(choices).map(([value, words]) => (
            <option key={value} value={value}>
              {words}
            </option>
          ))}
        </ChoiceField>
      );
    case 'email':
    case 'code':
      return <TextField {...shared} fill={fill} {...INPUT[kind]} />;
    case 'text':
      return <TextField {...shared} fill={fill} />;
  }
}

const INPUT = { email: { type: 'email' }, code: { inputMode: 'numeric', short: true } } as const;
