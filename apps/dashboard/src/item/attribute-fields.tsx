/** A box for each value that a rule asks of such a thing and no dated fact holds. All may be left open. */
import type { components } from '@garboard/client/generated/api.d.ts';
import { strings } from '../strings/record.ts';
import { ChoiceField, TextField } from '../ui/fields.tsx';
import { sentenceCase } from '../ui/number-words.ts';
import type { AttributeDraft } from './attribute-draft.ts';

type Attribute = components['schemas']['Attribute'];
type Props = {
  attributes: readonly Attribute[];
  draft: AttributeDraft;
  faults: Readonly<Record<string, string>>;
  onChange: (name: string, value: string) => void;
};

const { attributes: words } = strings;

export function AttributeFields({ attributes, draft, faults, onChange }: Props) {
  if (attributes.length === 0) return null;
  return (
    <fieldset>
      <legend>{words.heading}</legend>
      <p className="field-help">{words.help}</p>
      {attributes.map((attribute) => (
        <AttributeField
          key={attribute.name}
          attribute={attribute}
          value={draft[attribute.name] ?? ''}
          fault={faults[attribute.name]}
          onChange={(value) => onChange(attribute.name, value)}
        />
      ))}
    </fieldset>
  );
}

type FieldProps = { attribute: Attribute; value: string; fault: string | undefined; onChange: (value: string) => void };

function AttributeField({ attribute, value, fault, onChange }: FieldProps) {
  const { name, is, choices, words: said, whereFound } = attribute;
  const field = {
    id: `item-attributes-${name}`,
    name: sentenceCase(is === 'months' || is === 'hours' ? words.inUnits(said, is) : said),
    help: words.found(whereFound),
    value,
    fault,
    onChange,
  };
  if (is !== 'yes_no' && is !== 'choice')
    return <TextField {...field} short {...(is !== 'date' && { inputMode: 'numeric' })} />;
  return (
    <ChoiceField {...field}>
      <option value="">{words.open}</option>
      {(choices ?? YES_NO).map((choice) => (
        <option key={choice.value} value={choice.value}>
          {choice.words}
        </option>
      ))}
    </ChoiceField>
  );
}

const YES_NO = [
  { value: 'yes', words: words.yes },
  { value: 'no', words: words.no },
];
