import { strings } from '../strings/own-rule.ts';
import { ChoiceField } from '../ui/fields.tsx';
import { sentenceCase } from '../ui/number-words.ts';
import { namesOf } from './rule-words.ts';

type Named = { readonly id: string; readonly name: string };

/** One kind after the other is put on the list; each can be taken off again. */
export function KindsField(props: {
  chosen: readonly string[];
  kinds: readonly Named[];
  fault: string | undefined;
  onChange: (chosen: readonly string[]) => void;
}) {
  const { chosen, kinds, fault, onChange } = props;
  return (
    <div>
      <ChoiceField
        id="rule-kinds"
        name={strings.box.kinds}
        value=""
        fault={fault}
        onChange={(id) => id !== '' && onChange([...chosen, id])}
      >
        <option value="">{strings.addKind}</option>
        {kinds
          .filter(({ id }) => !chosen.includes(id))
          .map(({ id, name }) => (
            <option key={id} value={id}>
              {sentenceCase(name)}
            </option>
          ))}
      </ChoiceField>
      <ul className="chosen-kinds" aria-live="polite">
        {chosen.map((id) => {
          const [name = id] = namesOf([id], kinds);
          return (
            <li key={id}>
              {sentenceCase(name)}{' '}
              <button
                type="button"
                className="word"
                aria-label={strings.takeOff(name)}
                onClick={() => onChange(chosen.filter((each) => each !== id))}
              >
                ×
              </button>
            </li>
          );
        })}
      </ul>
    </div>
  );
}
