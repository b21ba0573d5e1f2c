/** Which keys do what, and the switch for those that are a single character. */
import { strings } from '../strings/search.ts';
import { Dialog } from '../ui/dialog.tsx';
import { useSingleKeys } from './use-shortcuts.ts';
import './palette.css';

export function Shortcuts({ onClose }: { onClose: () => void }) {
  const [singleKeys, setSingleKeys] = useSingleKeys();
  return (
    <Dialog name={strings.shortcuts} onClose={onClose}>
      <h2>{strings.shortcuts}</h2>
      <dl className="shortcuts">
        {strings.keys.map(({ keys, does }) => (
          <div key={does}>
            <dt>
              {keys.map((key) => (
                <span key={key}>
                  <kbd>{key}</kbd>{' '}
                </span>
              ))}
            </dt>
            <dd>{does}</dd>
          </div>
        ))}
      </dl>
      <label>
        <input type="checkbox" checked={singleKeys} onChange={(event) => setSingleKeys(event.currentTarget.checked)} />{' '}
        {strings.singleKeys}
      </label>
      <p className="acts palette-hint">
        <button type="button" onClick={onClose}>
          {strings.close}
        </button>
      </p>
    </Dialog>
  );
}
