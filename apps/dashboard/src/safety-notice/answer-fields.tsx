import { Options } from '../item/options.tsx';
import { capacityWords, evidenceWords } from '../strings/codes.ts';
import { strings as recordStrings } from '../strings/record.ts';
import { strings } from '../strings/safety-notice.ts';
import { DateField } from '../ui/date-field.tsx';
import { ChoiceField, LongField, TextField } from '../ui/fields.tsx';
import { type AnswerBox, type AnswerDraft, type AnswerFaults, boxesOfAnswer } from './answer-draft.ts';
import type { SafetyNotice } from './notice.query.ts';

const { answerForm } = strings;
const { form } = recordStrings;

const NAMES: Record<AnswerBox, string> = {
  answer: answerForm.answer,
  on: answerForm.on,
  name: form.name,
  capacity: form.capacity,
  certificate: form.certificate,
  evidence: form.evidence,
  reference: answerForm.reference,
  serialRead: answerForm.serialRead,
  until: answerForm.until,
  note: answerForm.note,
};
export const nameOfBox = (box: AnswerBox): string => NAMES[box];

type Props = {
  draft: AnswerDraft;
  notice: SafetyNotice;
  correcting: boolean;
  faults: AnswerFaults;
  onChange: (changed: Partial<AnswerDraft>) => void;
};

export function AnswerFields({ draft, notice, correcting, faults, onChange }: Props) {
  const boxes = boxesOfAnswer(draft.answer);
  const field = (box: AnswerBox) => ({
    id: `answer-${box}`,
    name: NAMES[box],
    value: draft[box],
    fault: faults[box],
    onChange: (value: string) => onChange({ [box]: value }),
  });
  const urgent = notice.deadline.kind === 'before_next_use';
  return (
    <>
      <ChoiceField {...field('answer')} help={urgent ? answerForm.notOffered : undefined}>
        <option value="">{answerForm.choose}</option>
        <Options words={offered(urgent, correcting)} />
      </ChoiceField>
      <DateField {...field('on')} help={recordStrings.dateFaults.day} />
      {boxes.until && <DateField {...field('until')} help={recordStrings.dateFaults.day} />}
      {boxes.replaced && (
        <label className="check">
          <input
            type="checkbox"
            checked={draft.replaced}
            onChange={(event) => onChange({ replaced: event.currentTarget.checked })}
          />
          {answerForm.replaced}
        </label>
      )}
      {boxes.serial && (
        <TextField
          {...field('serialRead')}
          help={boxes.replaced && draft.replaced ? answerForm.newSerialHelp : answerForm.serialHelp}
          short
        />
      )}
      <fieldset>
        <legend>{form.who}</legend>
        <div className="field-pair">
          <TextField {...field('name')} />
          <ChoiceField {...field('capacity')}>
            <option value="">{form.noCapacity}</option>
            <Options words={capacityWords} />
          </ChoiceField>
        </div>
      </fieldset>
      {boxes.proof && (
        <div className="field-pair">
          <ChoiceField {...field('evidence')}>
            <option value="">{form.choose}</option>
            <Options words={evidenceWords} />
          </ChoiceField>
          <TextField {...field('reference')} />
        </div>
      )}
      <LongField {...field('note')} name={boxes.proof ? answerForm.note : answerForm.noteWhy} />
    </>
  );
}

/** Putting off is not offered for what is asked before the next use, nor opening again without a mistake to name. */
function offered(urgent: boolean, correcting: boolean): Record<string, string> {
  const { deferred, reopened, ...always } = strings.answers;
  return { ...always, ...(!urgent && { deferred }), ...(correcting && { reopened }) };
}
