import { useQuery } from '@tanstack/react-query';
import { evidenceWords, outcomeWords } from '../strings/codes.ts';
import { strings } from '../strings/record.ts';
import { DateField } from '../ui/date-field.tsx';
import { ChoiceField, LongField, TextField } from '../ui/fields.tsx';
import { itemKindsQuery } from './catalogue.query.ts';
import { DoneByFields } from './done-by-fields.tsx';
import { type Box, boxesOf, type Draft, type Faults } from './fact-draft.ts';
import type { FieldOf } from './field-of.ts';
import type { Item } from './item.query.ts';
import { KindCaution } from './kind-caution.tsx';
import { FactOptions, ItemOptions, Options } from './options.tsx';
import { TestField } from './test-field.tsx';

const { form } = strings;

type FieldsProps = {
  draft: Draft;
  items: readonly Item[];
  faults: Faults;
  correcting: boolean;
  onChange: (box: Box, value: string) => void;
};

export function FactFields(props: FieldsProps) {
  const { draft, items, correcting } = props;
  const item = items.find(({ id }) => id === draft.item);
  const kind = useQuery(itemKindsQuery()).data?.find(({ id }) => id === item?.kind);
  const whereFound = kind?.dates.find(({ fact }) => fact === draft.fact)?.whereFound;
  const has = boxesOf(draft.fact);
  const field = fieldOf(props);
  return (
    <>
      {!correcting && (
        <ChoiceField {...field('item')} name={form.item}>
          <ItemOptions items={items} />
        </ChoiceField>
      )}
      {item && <KindCaution kind={item.kind} />}
      <ChoiceField {...field('fact')} name={form.fact}>
        <FactOptions kind={kind} />
      </ChoiceField>
      {item && <TestField {...field('test')} kind={item.kind} fact={draft.fact} />}
      <DateField
        {...field('on')}
        name={form.on}
        help={[form.onHelp, whereFound && form.found(whereFound)].filter(Boolean).join(' ')}
      />
      {has.until && <DateField {...field('until')} name={form.until} help={form.untilHelp} />}
      {has.readOn && <DateField {...field('readOn')} name={form.readOn} help={form.readOnHelp} />}
      {has.reading && (
        <div className="field-pair">
          <TextField {...field('readingValue')} name={form.reading} inputMode="decimal" />
          <ChoiceField {...field('readingUnit')} name={form.unit}>
            <option value="hours">{form.hours}</option>
            <option value="sea_miles">{form.seaMiles}</option>
          </ChoiceField>
        </div>
      )}
      {has.outcome && (
        <ChoiceField {...field('outcome')} name={form.outcome} help={form.outcomeHelp} short>
          <Options words={outcomeWords} />
        </ChoiceField>
      )}
      {has.doneBy && <DoneByFields field={field} />}
      <ChoiceField {...field('evidence')} name={form.evidence} short>
        <Options words={evidenceWords} />
      </ChoiceField>
      <LongField {...field('note')} name={correcting ? form.noteCorrects : form.note} />
    </>
  );
}

const fieldOf =
  ({ draft, faults, onChange }: FieldsProps): FieldOf =>
  (box) => ({
    id: `fact-${box}`,
    value: draft[box],
    fault: faults[box],
    onChange: (value) => onChange(box, value),
  });
