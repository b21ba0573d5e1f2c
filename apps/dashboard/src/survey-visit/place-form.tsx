/** Whatever is to be written of one place: that it is sound, that something is not right, what was measured, what could not be seen. */
import { useState } from 'react';
import { hazardWords, tradeWords, urgencyWords } from '../strings/finding-codes.ts';
import { form } from '../strings/form.ts';
import { measureWords, reasonWords, strings } from '../strings/survey-visit.ts';
import { LineChoice, LineForm, LineText } from './line-form.tsx';
import { EMPTY_LINE, type LineDraft, lineOf } from './line-of.ts';
import { type Stop, type Visit, writeLine } from './visit.query.ts';

const { one } = strings;

export function PlaceForm({ visit, stop }: { visit: Visit; stop: Stop }) {
  const [draft, setDraft] = useState<LineDraft>(EMPTY_LINE);
  const box = (key: keyof LineDraft) => ({
    value: draft[key],
    onChange: (value: string) => setDraft({ ...draft, [key]: value }),
  });
  const { kind } = draft;
  const write = async (once: (body: unknown) => string) => {
    const line = lineOf(draft, visit, stop.zone);
    if (line === null) return form.needed;
    await writeLine(visit.id, line, once(line));
    // Something seen there answers the place as well.
    if (line.kind === 'finding' && !stop.answer) {
      const answer = { kind: 'zone', body: { zone: stop.zone, answer: 'sighting' } } as const;
      await writeLine(visit.id, answer, `${once(line)}-place`);
    }
    setDraft({ ...EMPTY_LINE, kind: kind === 'sound' || kind === 'not_examined' ? 'sound' : kind });
    return null;
  };
  return (
    <LineForm
      label={`${one.line}: ${stop.name}`}
      visitId={visit.id}
      onWrite={write}
      moveOn={kind === 'sound' || kind === 'not_examined'}
    >
      <LineChoice name={one.place} words={one.kinds} {...box('kind')} />
      {(kind === 'not_examined' || kind === 'limitation') && (
        <LineChoice name={one.reason} words={reasonWords} {...box('reason')} />
      )}
      {kind === 'reading' && (
        <>
          <LineText name={one.point} known={stop.points} {...box('point')} />
          <LineChoice name={one.measure} words={measureWords} {...box('measure')} />
          <LineText name={one.value} {...box('value')} />
          <LineChoice name={one.instrument} words={instrumentsOf(visit)} {...box('instrument')} />
        </>
      )}
      <LineText name={one.words} wide {...box('words')} />
      {kind === 'finding' && (
        <>
          <LineChoice name={one.hazard} words={hazardWords} {...box('hazard')} />
          <LineChoice name={one.urgency} words={urgencyWords} {...box('urgency')} />
          {visit.purpose === 'deficiency_list' && <LineText name={one.deadline} {...box('deadline')} />}
        </>
      )}
      {kind === 'referral' && (
        <>
          <LineChoice name={one.trade} words={tradeWords} {...box('trade')} />
          <LineText name={one.dueOn} {...box('dueOn')} />
        </>
      )}
    </LineForm>
  );
}

const instrumentsOf = ({ instruments }: Visit) => ({
  '': one.noInstrument,
  ...Object.fromEntries(instruments.map(({ key, maker, model }) => [key, `${maker} ${model}`])),
});
