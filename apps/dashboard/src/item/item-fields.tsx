import { useQuery } from '@tanstack/react-query';
import type { SchemeCode } from '../strings/codes.ts';
import { strings } from '../strings/record.ts';
import { ChoiceField, TextField } from '../ui/fields.tsx';
import { sentenceCase } from '../ui/number-words.ts';
import { AttributeFields } from './attribute-fields.tsx';
import { itemKindsQuery } from './catalogue.query.ts';
import { DutiesBrought } from './duties-brought.tsx';
import type { ItemBox, ItemDraft, ItemFaults } from './item-draft.ts';
import { KindCaution } from './kind-caution.tsx';
import { KindSuggestions } from './kind-suggestions.tsx';

const { add, form } = strings;

export function ItemFields(props: {
  draft: ItemDraft;
  /** What the vessel is kept under. */
  schemes: SchemeCode[];
  faults: ItemFaults;
  /** What a thing is stays what it is. */
  kindIsFixed?: boolean;
  onChange: (change: Partial<ItemDraft>) => void;
}) {
  const { draft, schemes, faults, kindIsFixed = false, onChange } = props;
  const kinds = useQuery(itemKindsQuery()).data ?? [];
  const kind = kinds.find(({ id }) => id === draft.kind);
  const field = (box: ItemBox) => ({
    id: `item-${box}`,
    name: add[box],
    value: draft[box],
    fault: faults[box],
    onChange: (value: string) => onChange({ [box]: value }),
  });
  return (
    <>
      <TextField {...field('label')} help={add.labelHelp} />
      {!kindIsFixed && (
        <>
          <KindSuggestions
            kinds={kinds}
            text={draft.label}
            chosen={draft.kind}
            onChoose={(id) => onChange({ kind: id })}
          />
          <ChoiceField {...field('kind')}>
            <option value="">{form.choose}</option>
            {kinds.map(({ id, name }) => (
              <option key={id} value={id}>
                {sentenceCase(name)}
              </option>
            ))}
          </ChoiceField>
        </>
      )}
      {kind && <KindCaution kind={kind.id} />}
      {kind && !kindIsFixed && <DutiesBrought kind={kind.id} schemes={schemes} />}
      <TextField {...field('zone')} help={kind ? add.zoneHelp(kind.zone) : undefined} />
      <TextField {...field('quantity')} inputMode="numeric" short />
      <div className="field-pair">
        <TextField {...field('maker')} />
        <TextField {...field('model')} />
      </div>
      <TextField {...field('serialNumber')} short />
      {kind && (
        <AttributeFields
          attributes={kind.attributes}
          draft={draft.attributes}
          faults={faults.attributes ?? {}}
          onChange={(name, value) => onChange({ attributes: { ...draft.attributes, [name]: value } })}
        />
      )}
    </>
  );
}
