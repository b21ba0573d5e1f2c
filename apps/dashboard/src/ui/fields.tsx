/** Named boxes to type or choose in: the name, the help and the fault are tied to the box for whoever cannot see them. */
import { NativeSelect, Textarea, TextInput } from '@mantine/core';
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

export function TextField(props: Field & { inputMode?: 'text' | 'numeric' | 'decimal' }) {
  return (
    <TextInput {...shared(props)} {...(props.inputMode ? { inputMode: props.inputMode } : {})} autoComplete="off" />
  );
}

export function LongField(props: Field) {
  return <Textarea {...shared(props)} rows={3} />;
}

export function ChoiceField(props: Field & { children: ReactNode }) {
  return (
    <NativeSelect {...shared(props)} rightSection={null}>
      {props.children}
    </NativeSelect>
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
