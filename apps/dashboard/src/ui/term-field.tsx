import { ChoiceField } from './fields.tsx';

type Props = {
  id: string;
  name: string;
  help?: string;
  /** What can be chosen, by its number. */
  terms: Readonly<Record<number, string>>;
  value: number;
  onChange: (value: number) => void;
};

/** So many hours or days, chosen by their words. */
export function TermField({ terms, value, onChange, ...field }: Props) {
  return (
    <ChoiceField {...field} value={String(value)} onChange={(chosen) => onChange(Number(chosen))} short>
      {Object.entries(terms).map(([each, words]) => (
        <option key={each} value={each}>
          {words}
        </option>
      ))}
    </ChoiceField>
  );
}
