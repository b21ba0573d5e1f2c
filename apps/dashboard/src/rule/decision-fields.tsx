import { strings } from '../strings/own-rule.ts';
import { LongField, TextField } from '../ui/fields.tsx';
import type { OwnRuleFieldOf } from './own-rule-fields.tsx';

/** Who decided it, why, by which document, from when: asked of every version and of the end. */
export function DecisionFields({ field }: { field: OwnRuleFieldOf }) {
  return (
    <fieldset>
      <legend>{strings.decision}</legend>
      <TextField {...field('takesEffectOn')} help={strings.takesEffectHelp} short />
      <TextField {...field('decidedBy')} />
      <LongField {...field('reason')} />
      <TextField {...field('document')} help={strings.documentHelp} />
    </fieldset>
  );
}
