import { Options } from '../item/options.tsx';
import { strings } from '../strings/own-rule.ts';
import { eventWords } from '../strings/rule.ts';
import { ChoiceField, TextField } from '../ui/fields.tsx';
import type { OwnRuleFieldOf } from './own-rule-fields.tsx';

const FROM = { installed: 'its fitting', manufactured: 'its manufacture' };
type Props = { field: OwnRuleFieldOf; printed: string; onPrinted: (printed: string) => void };

export function OwnRuleLimitFields({ field, printed, onPrinted }: Props) {
  return (
    <fieldset>
      <legend>{strings.limits}</legend>
      <p className="field-help">{strings.limitsHelp}</p>
      <div className="field-pair">
        <TextField {...field('lastDone')} />
        <TextField {...field('installed')} />
      </div>
      <div className="field-pair">
        <TextField {...field('manufactured')} />
        <TextField {...field('hours')} inputMode="numeric" />
      </div>
      <div className="field-pair">
        <TextField {...field('within')} />
        <ChoiceField {...field('event')}>
          <Options words={eventWords} />
        </ChoiceField>
      </div>
      <label className="tick">
        <input
          id="rule-printed"
          type="checkbox"
          checked={printed === 'yes'}
          onChange={(event) => onPrinted(event.currentTarget.checked ? 'yes' : '')}
        />
        {strings.box.printed}
      </label>
      <p className="field-help">{strings.firstHelp}</p>
      <div className="field-pair">
        <TextField {...field('first')} />
        <ChoiceField {...field('firstFrom')}>
          <Options words={FROM} />
        </ChoiceField>
      </div>
      <p className="field-help">{strings.windowHelp}</p>
      <div className="field-pair">
        <TextField {...field('before')} />
        <TextField {...field('after')} />
      </div>
    </fieldset>
  );
}
