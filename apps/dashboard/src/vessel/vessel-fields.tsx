import type { Scheme } from '../rule/rule.query.ts';
import type { SchemeCode } from '../strings/codes.ts';
import { strings } from '../strings/new-vessel.ts';
import { ChoiceField, TextField } from '../ui/fields.tsx';
import type { VesselBox, VesselDraft, VesselFaults } from './vessel-draft.ts';

type Props = {
  draft: VesselDraft;
  faults: VesselFaults;
  schemes: readonly Scheme[];
  onChange: (change: Partial<VesselDraft>) => void;
};

/** What the browser knows, and the one zone that it leaves out. */
export const ZONES = [...new Set([...Intl.supportedValuesOf('timeZone'), 'UTC'])];

export function VesselFields({ draft, faults, schemes, onChange }: Props) {
  const field = (box: VesselBox) => ({
    id: `vessel-${box}`,
    name: strings.box[box],
    value: draft[box],
    fault: faults[box],
    onChange: (value: string) => onChange({ [box]: value }),
  });
  return (
    <>
      <TextField {...field('name')} />
      <div className="field-pair">
        <TextField {...field('type')} help={strings.typeHelp} />
        <TextField {...field('lengthOverallM')} help={strings.lengthHelp} inputMode="decimal" short />
      </div>
      <ChoiceField {...field('timeZone')} help={strings.timeZoneHelp}>
        <option value="">{strings.organisationsZone}</option>
        {ZONES.map((zone) => (
          <option key={zone} value={zone}>
            {zone.replaceAll('_', ' ')}
          </option>
        ))}
      </ChoiceField>
      <SchemeChoice chosen={draft.schemes} schemes={schemes} onChange={(chosen) => onChange({ schemes: chosen })} />
    </>
  );
}

export function SchemeChoice(props: {
  chosen: readonly SchemeCode[];
  schemes: readonly Scheme[];
  onChange: (chosen: readonly SchemeCode[]) => void;
}) {
  const { chosen, schemes, onChange } = props;
  const turn = (id: SchemeCode) =>
    onChange(chosen.includes(id) ? chosen.filter((each) => each !== id) : [...chosen, id]);
  return (
    <fieldset className="plain" aria-describedby="vessel-schemes-help">
      <legend className="field-name">{strings.schemes}</legend>
      <p id="vessel-schemes-help" className="field-help">
        {strings.schemesHelp}
      </p>
      <div className="ticks">
        {schemes
          .filter(({ always }) => !always)
          .map(({ id, name }) => (
            <label key={id} className="tick">
              <input type="checkbox" checked={chosen.includes(id)} onChange={() => turn(id)} />
              {name}
            </label>
          ))}
      </div>
    </fieldset>
  );
}
