/** One line of a place, typed without leaving the keys: what sort of line, its words, Enter. */
import { useQueryClient } from '@tanstack/react-query';
import { type FormEvent, type ReactNode, useId, useRef, useState } from 'react';
import { useOnceKey } from '../item/use-once-key.ts';
import { form } from '../strings/form.ts';
import { strings } from '../strings/survey-visit.ts';
import { formFaults } from '../ui/form-faults.ts';
import { focusLine, lineAfter } from './focus-after.ts';

type Props = {
  label: string;
  /** `null` with the words of what is missing. */
  onWrite: (once: (body: unknown) => string) => Promise<string | null>;
  /** Whether the next line of the route takes the focus, or this one again. */
  moveOn: boolean;
  visitId: string;
  children: ReactNode;
};

export function LineForm({ label, onWrite, moveOn, visitId, children }: Props) {
  const line = useRef<HTMLFormElement>(null);
  const [fault, setFault] = useState<string | null>(null);
  const [busy, setBusy] = useState(false);
  const queries = useQueryClient();
  const once = useOnceKey();
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    setBusy(true);
    try {
      const missing = await onWrite(once);
      setFault(missing);
      if (missing !== null) return;
      const next = lineAfter(line.current, moveOn);
      await queries.invalidateQueries({ queryKey: ['visit', visitId] });
      void queries.invalidateQueries({
        predicate: ({ queryKey }) => queryKey[0] === 'findings' || queryKey[0] === 'due',
      });
      focusLine(next);
    } catch (error) {
      setFault(
        formFaults(error)
          .map(({ at, words }) => (at === undefined ? words : `${at}: ${words}`))
          .join('; '),
      );
    } finally {
      setBusy(false);
    }
  };
  return (
    <form ref={line} className="line-form" data-line aria-label={label} onSubmit={submit} noValidate>
      {children}
      <button type="submit" disabled={busy}>
        {busy ? form.busy : strings.one.write}
      </button>
      {fault && (
        <p className="line-fault" role="alert">
          {strings.one.notDone}: {fault}
        </p>
      )}
    </form>
  );
}

type BoxProps = { name: string; value: string; onChange: (value: string) => void };

/** `known`: words that were used before, offered while typing. */
export function LineText({
  name,
  value,
  onChange,
  wide,
  known = [],
}: BoxProps & { wide?: boolean; known?: readonly string[] }) {
  const id = useId();
  return (
    <label className={wide ? 'line-box wide' : 'line-box'}>
      <span>{name}</span>
      <input
        value={value}
        autoComplete="off"
        {...(known.length > 0 && { list: id })}
        onChange={(event) => onChange(event.currentTarget.value)}
      />
      {known.length > 0 && (
        <datalist id={id}>
          {known.map((each) => (
            <option key={each} value={each} />
          ))}
        </datalist>
      )}
    </label>
  );
}

export function LineChoice({ name, value, onChange, words }: BoxProps & { words: Readonly<Record<string, string>> }) {
  return (
    <label className="line-box">
      <span>{name}</span>
      <select value={value} onChange={(event) => onChange(event.currentTarget.value)}>
        {Object.entries(words).map(([code, each]) => (
          <option key={code} value={code}>
            {each}
          </option>
        ))}
      </select>
    </label>
  );
}
