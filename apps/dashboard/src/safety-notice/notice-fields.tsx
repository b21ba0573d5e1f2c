import { useQuery } from '@tanstack/react-query';
import { itemKindsQuery } from '../item/catalogue.query.ts';
import { KindCaution } from '../item/kind-caution.tsx';
import { Options } from '../item/options.tsx';
import { strings as recordStrings } from '../strings/record.ts';
import { strings } from '../strings/safety-notice.ts';
import { DateField } from '../ui/date-field.tsx';
import { ChoiceField, LongField, TextField } from '../ui/fields.tsx';
import { sentenceCase } from '../ui/number-words.ts';
import type { NoticeBox, NoticeDraft, NoticeFaults } from './notice-draft.ts';

const { newNotice, actions, deadlines } = strings;
const { dateFaults, form } = recordStrings;

const NAMES: Record<NoticeBox, string> = { ...newNotice, title: newNotice.about };
export const nameOfBox = (box: NoticeBox): string => NAMES[box];

type Props = { draft: NoticeDraft; faults: NoticeFaults; onChange: (box: NoticeBox, value: string) => void };
type FieldOf = (box: NoticeBox) => {
  id: string;
  name: string;
  value: string;
  fault: string | undefined;
  onChange: (value: string) => void;
};

export function NoticeFields({ draft, faults, onChange }: Props) {
  const field: FieldOf = (box) => ({
    id: `notice-${box}`,
    name: NAMES[box],
    value: draft[box],
    fault: faults[box],
    onChange: (value: string) => onChange(box, value),
  });
  return (
    <>
      <fieldset>
        <legend>{newNotice.legends.what}</legend>
        <TextField {...field('title')} help={newNotice.titleHelp} />
        <div className="field-pair">
          <TextField {...field('publisher')} help={newNotice.publisherHelp} />
          <TextField {...field('reference')} />
        </div>
        <DateField {...field('issuedOn')} help={dateFaults.day} />
        <TextField {...field('document')} help={newNotice.documentHelp} />
        <TextField {...field('address')} />
      </fieldset>
      <WhichThings field={field} kind={draft.kind} />
      <WhatToDo field={field} deadline={draft.deadline} />
    </>
  );
}

function WhichThings({ field, kind }: { field: FieldOf; kind: string }) {
  const kinds = useQuery(itemKindsQuery()).data ?? [];
  return (
    <fieldset>
      <legend>{newNotice.legends.which}</legend>
      <ChoiceField {...field('kind')}>
        <option value="">{form.choose}</option>
        {kinds.map(({ id, name }) => (
          <option key={id} value={id}>
            {sentenceCase(name)}
          </option>
        ))}
      </ChoiceField>
      {kind !== '' && <KindCaution kind={kind} />}
      <div className="field-pair">
        <LongField {...field('makers')} help={newNotice.onePerLine} />
        <LongField {...field('models')} help={newNotice.onePerLine} />
      </div>
      <LongField {...field('serials')} help={newNotice.serialsHelp} />
      <DateField {...field('madeFrom')} help={newNotice.madeHelp} />
      <DateField {...field('madeTo')} help={newNotice.madeHelp} />
    </fieldset>
  );
}

function WhatToDo({ field, deadline }: { field: FieldOf; deadline: string }) {
  return (
    <fieldset>
      <legend>{newNotice.legends.todo}</legend>
      <TextField {...field('hazard')} />
      <div className="field-pair">
        <ChoiceField {...field('action')}>
          <Options words={actions} />
        </ChoiceField>
        <ChoiceField {...field('weight')}>
          <Options words={newNotice.weights} />
        </ChoiceField>
      </div>
      <TextField {...field('actionWords')} help={newNotice.actionWordsHelp} />
      <ChoiceField {...field('deadline')}>
        <Options words={deadlines} />
      </ChoiceField>
      {deadline === 'on' && <DateField {...field('deadlineOn')} help={dateFaults.day} />}
      {deadline === 'days_after_issue' && <TextField {...field('deadlineDays')} inputMode="numeric" short />}
    </fieldset>
  );
}
