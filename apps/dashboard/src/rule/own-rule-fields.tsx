import { Options } from '../item/options.tsx';
import { capacityWords, schemeWords, testWords } from '../strings/codes.ts';
import { actKindWords, ownActWords, ownWeightWords, strings } from '../strings/own-rule.ts';
import { ChoiceField, LongField, TextField } from '../ui/fields.tsx';
import { KindsField } from './kinds-field.tsx';
import type { VesselName } from './own-rule.query.ts';
import type { OwnRuleBox, OwnRuleDraft, OwnRuleFaults } from './own-rule-draft.ts';
import { OwnRuleLimitFields } from './own-rule-limit-fields.tsx';
import { resetInWords } from './rule-words.ts';
import { VesselsField } from './vessels-field.tsx';

type Texts = Exclude<OwnRuleBox, 'kinds' | 'vesselIds'>;
export type OwnRuleFieldOf = (box: Texts) => {
  id: string;
  name: string;
  value: string;
  fault: string | undefined;
  onChange: (value: string) => void;
};
type Props = {
  draft: OwnRuleDraft;
  faults: OwnRuleFaults;
  kinds: readonly { readonly id: string; readonly name: string }[];
  vessels: readonly VesselName[];
  onChange: (change: Partial<OwnRuleDraft>) => void;
};

export function OwnRuleFields({ draft, faults, kinds, vessels, onChange }: Props) {
  const field: OwnRuleFieldOf = (box) => ({
    id: `rule-${box}`,
    name: strings.box[box],
    value: draft[box],
    fault: faults[box],
    onChange: (value) => onChange({ [box]: value }),
  });
  return (
    <>
      <LongField {...field('inWords')} help={strings.inWordsHelp} />
      <KindsField
        chosen={draft.kinds}
        kinds={kinds}
        fault={faults.kinds}
        onChange={(chosen) => onChange({ kinds: chosen })}
      />
      <div className="field-pair">
        <ChoiceField {...field('actionKind')}>
          <Options words={actKindWords} />
        </ChoiceField>
        <ChoiceField {...field('weight')}>
          <Options words={ownWeightWords} />
        </ChoiceField>
      </div>
      <TextField {...field('actionWords')} help={strings.actionHelp} />
      <ChoiceField {...field('vessels')}>
        <Options words={strings.which} />
      </ChoiceField>
      {draft.vessels === 'under_scheme' && (
        <ChoiceField {...field('scheme')}>
          <option value="">{strings.choose}</option>
          <Options words={schemeWords} />
        </ChoiceField>
      )}
      {draft.vessels === 'chosen' && (
        <VesselsField
          chosen={draft.vesselIds}
          vessels={vessels}
          fault={faults.vesselIds}
          onChange={(chosen) => onChange({ vesselIds: chosen })}
        />
      )}
      <OwnRuleLimitFields field={field} printed={draft.printed} onPrinted={(printed) => onChange({ printed })} />
      <fieldset>
        <legend>{strings.anew}</legend>
        <ResetFields field={field} act={draft.act} />
        {draft.moreResets.length > 0 && (
          <p className="quiet">{strings.alsoAnew(draft.moreResets.map(resetInWords).join('; '))}</p>
        )}
      </fieldset>
    </>
  );
}

function ResetFields({ field, act }: { field: OwnRuleFieldOf; act: string }) {
  return (
    <>
      <ChoiceField {...field('act')}>
        {act === '' && <option value="">{strings.choose}</option>}
        <Options words={ownActWords} />
      </ChoiceField>
      <div className="field-pair">
        <ChoiceField {...field('test')}>
          <option value="">{strings.noTest}</option>
          <Options words={testWords} />
        </ChoiceField>
        <ChoiceField {...field('by')}>
          <option value="">{strings.anybody}</option>
          <Options words={capacityWords} />
        </ChoiceField>
      </div>
    </>
  );
}
