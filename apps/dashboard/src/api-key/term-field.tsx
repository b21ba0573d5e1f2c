import { strings } from '../strings/api-key.ts';
import { ChoiceField } from '../ui/fields.tsx';

export function TermField({ id, days, onChange }: { id: string; days: number; onChange: (days: number) => void }) {
  return (
    <ChoiceField
      id={id}
      name={strings.endsAfter}
      help={strings.endsAfterHelp}
      value={String(days)}
      onChange={(value) => onChange(Number(value))}
      short
    >
      {Object.entries(strings.terms).map(([value, words]) => (
        <option key={value} value={value}>
          {words}
        </option>
      ))}
    </ChoiceField>
  );
}
