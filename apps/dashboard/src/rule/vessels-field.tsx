import { strings } from '../strings/own-rule.ts';
import type { VesselName } from './own-rule.query.ts';

export function VesselsField(props: {
  chosen: readonly string[];
  vessels: readonly VesselName[];
  fault: string | undefined;
  onChange: (chosen: readonly string[]) => void;
}) {
  const { chosen, vessels, fault, onChange } = props;
  const turn = (id: string) => onChange(chosen.includes(id) ? chosen.filter((each) => each !== id) : [...chosen, id]);
  return (
    <fieldset className="plain" id="rule-vesselIds" tabIndex={-1} aria-describedby="rule-vesselIds-fault">
      <legend className="field-name">{strings.box.vesselIds}</legend>
      <div className="ticks">
        {vessels.map(({ id, name }) => (
          <label key={id} className="tick">
            <input type="checkbox" checked={chosen.includes(id)} onChange={() => turn(id)} />
            {name}
          </label>
        ))}
      </div>
      <p id="rule-vesselIds-fault" className={fault ? 'field-fault' : undefined}>
        {fault}
      </p>
    </fieldset>
  );
}
