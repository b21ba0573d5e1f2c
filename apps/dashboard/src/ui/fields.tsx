/** Named boxes to type or choose in: the name, the help and the fault are tied to the box for whoever cannot see them. */
import { InputBase, Textarea, TextInput } from '@mantine/core';
import type { ReactNode } from 'react';

type Field = {
  id: string;
  name: string;
  help?: ReactNode;
  fault?: string | undefined;
  value: string;
  onChange: (value: string) => void;
  short?: boolean;
};

/** `beside` is said next to the box, and said again when it changes. */
export function TextField(
  props: Field & {
    inputMode?: 'numeric' | 'decimal';
    beside?: string;
    type?: 'text' | 'email' | 'password';
    /** What a browser may fill in: a token of HTML's `autocomplete`. */
    fill?: string | undefined;
  },
) {
  const { beside, type, fill = 'off' } = props;
  return (
    <TextInput
      {...shared(props)}
      {...(props.inputMode && { inputMode: props.inputMode })}
      {...(beside !== undefined && { inputContainer: (box) => <Beside words={beside}>{box}</Beside> })}
      {...(type && { type })}
      autoComplete={fill}
      {...(fill !== 'off' && { autoCapitalize: 'none', spellCheck: false })}
    />
  );
}

function Beside({ words, children }: { words: string; children: ReactNode }) {
  return (
    <span className="field-line">
      {children}
      <span className="field-echo" aria-live="polite">
        {words}
      </span>
    </span>
  );
}

export function LongField(props: Field) {
  return <Textarea {...shared(props)} rows={3} />;
}

export function ChoiceField(props: Field & { children: ReactNode }) {
  return (
    <InputBase component="select" {...shared(props)}>
      {props.children}
    </InputBase>
  );
}

function shared({ id, name, help, fault, value, onChange, short }: Field) {
  return {
    id,
    label: name,
    description: help,
    error: fault,
    value,
    onChange: (event: { currentTarget: { value: string } }) => onChange(event.currentTarget.value),
    classNames: {
      root: 'field',
      label: 'field-name',
      description: 'field-help',
      error: 'field-fault',
      input: short ? 'field-box short' : 'field-box',
    },
  };
}
