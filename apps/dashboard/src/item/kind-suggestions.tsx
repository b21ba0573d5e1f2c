import { strings } from '../strings/record.ts';
import { sentenceCase } from '../ui/number-words.ts';
import type { ItemKind } from './catalogue.query.ts';
import { suggestKinds } from './suggest-kinds.ts';

type Props = { kinds: readonly ItemKind[]; text: string; chosen: string; onChoose: (kind: string) => void };

/** Said again as the words are typed; nothing is chosen for anybody. */
export function KindSuggestions({ kinds, text, chosen, onChoose }: Props) {
  const all = suggestKinds(kinds, text);
  const suggested = all.some(({ id }) => id === chosen) ? [] : all;
  return (
    <div className="suggestions" aria-live="polite">
      {suggested.length > 0 && (
        <>
          <span className="quiet">{strings.add.perhaps}</span>
          {suggested.map(({ id, name }) => (
            <button key={id} type="button" onClick={() => onChoose(id)}>
              {sentenceCase(name)}
            </button>
          ))}
        </>
      )}
    </div>
  );
}
