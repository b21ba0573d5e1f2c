import { strings } from '../strings/own-rule.ts';
import { VesselTicks } from '../vessel/vessel-ticks.tsx';
import type { VesselName } from './own-rule.query.ts';

export function VesselsField(props: {
  chosen: readonly string[];
  vessels: readonly VesselName[];
  fault: string | undefined;
  onChange: (chosen: readonly string[]) => void;
}) {
  const { chosen, vessels, fault, onChange } = props;
  return (
    <fieldset className="plain" id="rule-vesselIds" tabIndex={-1} aria-describedby="rule-vesselIds-fault">
      <legend className="field-name">{strings.box.vesselIds}</legend>
      <VesselTicks chosen={chosen} vessels={vessels} onChange={onChange} />
      <p id="rule-vesselIds-fault" className={fault ? 'field-fault' : undefined}>
        {fault}
      </p>
    </fieldset>
  );
}
