import { capacityWords } from '../strings/codes.ts';
import { strings } from '../strings/record.ts';
import { ChoiceField, TextField } from '../ui/fields.tsx';
import type { FieldOf } from './field-of.ts';
import { Options } from './options.tsx';

const { form } = strings;

export function DoneByFields({ field }: { field: FieldOf }) {
  return (
    <fieldset>
      <legend>{form.who}</legend>
      <ChoiceField {...field('capacity')} name={form.capacity} help={form.capacityHelp}>
        <option value="">{form.noCapacity}</option>
        <Options words={capacityWords} />
      </ChoiceField>
      <div className="field-pair">
        <TextField {...field('name')} name={form.name} />
        <TextField {...field('certificate')} name={form.certificate} />
      </div>
    </fieldset>
  );
}
