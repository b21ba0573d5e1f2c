import { useQuery } from '@tanstack/react-query';
import { itemKindsQuery } from '../item/catalogue.query.ts';
import { DoneByFields } from '../item/done-by-fields.tsx';
import { type Box, boxesOf, type Draft, type Faults } from '../item/fact-draft.ts';
import type { FieldOf } from '../item/field-of.ts';
import { KindCaution } from '../item/kind-caution.tsx';
import { FactOptions, Options } from '../item/options.tsx';
import { TestField } from '../item/test-field.tsx';
import { evidenceWords, outcomeWords } from '../strings/codes.ts';
import { strings } from '../strings/record.ts';
import { DateField } from '../ui/date-field.tsx';
import { ChoiceField, LongField } from '../ui/fields.tsx';
import type { DueRow } from './due.query.ts';

const { form } = strings;

type Props = {
  things: readonly DueRow[];
  draft: Draft;
  faults: Faults;
  onChange: (box: Box, value: string) => void;
};

export function BulkFields({ things, draft, faults, onChange }: Props) {
  const kinds = [...new Set(things.map(({ item }) => item.kind))];
  const kind = useQuery(itemKindsQuery()).data?.find(({ id }) => kinds.length === 1 && id === kinds[0]);
  const has = boxesOf(draft.fact);
  const field: FieldOf = (box) => ({
    ...{ id: `fact-${box}`, value: draft[box], fault: faults[box] },
    onChange: (value) => onChange(box, value),
  });
  return (
    <>
      {kinds.map((each) => (
        <KindCaution key={each} kind={each} />
      ))}
      <ChoiceField {...field('fact')} name={form.fact}>
        <FactOptions kind={kind} />
      </ChoiceField>
      {kind && <TestField {...field('test')} kind={kind.id} fact={draft.fact} />}
      <DateField {...field('on')} name={form.on} help={form.onHelp} />
      {has.until && <DateField {...field('until')} name={form.until} help={form.untilHelp} />}
      {has.outcome && (
        <ChoiceField {...field('outcome')} name={form.outcome} help={form.outcomeHelp} short>
          <Options words={outcomeWords} />
        </ChoiceField>
      )}
      {has.doneBy && <DoneByFields field={field} />}
      <ChoiceField {...field('evidence')} name={form.evidence} short>
        <Options words={evidenceWords} />
      </ChoiceField>
      <LongField {...field('note')} name={form.note} />
    </>
  );
}
