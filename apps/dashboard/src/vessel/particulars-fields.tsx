import type { Scheme } from '../rule/rule.query.ts';
import { strings } from '../strings/change-vessel.ts';
import { ChoiceField, TextField } from '../ui/fields.tsx';
import { DecodedIdentifiers } from './decoded-identifiers.tsx';
import {
  type Box,
  type ChangeDraft,
  type ChangeFaults,
  IDENTIFIERS,
  identifiersIn,
  MEASURES,
  WHOLE,
  WORDS,
} from './vessel-change.ts';
import { SchemeChoice, ZONES } from './vessel-fields.tsx';

type Props = {
  draft: ChangeDraft;
  faults: ChangeFaults;
  schemes: readonly Scheme[];
  onChange: (change: Partial<ChangeDraft>) => void;
};

export function ParticularsFields({ draft, faults, schemes, onChange }: Props) {
  const field = (box: Box) => ({
    id: `vessel-${box}`,
    name: strings.box[box],
    value: draft[box],
    fault: faults[box],
    onChange: (value: string) => onChange({ [box]: value }),
  });
  return (
    <>
      <TextField {...field('name')} />
      <ChoiceField {...field('timeZone')} help={strings.timeZoneHelp}>
        {[...new Set([draft.timeZone, ...ZONES])].map((zone) => (
          <option key={zone} value={zone}>
            {zone.replaceAll('_', ' ')}
          </option>
        ))}
      </ChoiceField>
      <SchemeChoice chosen={draft.schemes} schemes={schemes} onChange={(chosen) => onChange({ schemes: chosen })} />
      <fieldset>
        <legend>{strings.particulars}</legend>
        {WORDS.map((box) => (
          <TextField key={box} {...field(box)} />
        ))}
        <div className="field-pair">
          {WHOLE.map((box) => (
            <TextField key={box} {...field(box)} inputMode="numeric" short />
          ))}
        </div>
        {MEASURES.map((box) => (
          <TextField key={box} {...field(box)} inputMode="decimal" short />
        ))}
      </fieldset>
      <fieldset>
        <legend>{strings.identifiers}</legend>
        <p className="field-help">{strings.identifiersHelp}</p>
        {IDENTIFIERS.map((box) => (
          <TextField key={box} {...field(box)} short />
        ))}
        <DecodedIdentifiers identifiers={identifiersIn(draft)} builtYear={draft.builtYear} />
      </fieldset>
    </>
  );
}
