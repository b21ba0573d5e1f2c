import { type Permission, permissionsOf, type Role } from '../organisation/may.ts';
import { permissionWords, strings } from '../strings/api-key.ts';

/** `null`: all that the role may. */
export function ActsField(props: {
  role: Role;
  acts: Permission[] | null;
  onChange: (acts: Permission[] | null) => void;
}) {
  const { role, acts, onChange } = props;
  // Reading stays: every answer is one.
  const offered = permissionsOf(role).filter((each) => each !== 'read');
  if (offered.length === 0) return null;
  const turn = (act: Permission) =>
    onChange(acts?.includes(act) ? acts.filter((each) => each !== act) : [...(acts ?? ['read']), act]);
  return (
    <fieldset className="plain" id="key-permissions" tabIndex={-1}>
      <legend className="field-name">{strings.narrow}</legend>
      {[strings.all, strings.some].map((words) => (
        <label key={words} className="tick">
          <input
            type="radio"
            name="key-acts"
            checked={(acts === null) === (words === strings.all)}
            onChange={() => onChange(words === strings.all ? null : ['read'])}
          />
          {words}
        </label>
      ))}
      {acts && (
        <div className="ticks">
          <label className="tick">
            <input type="checkbox" checked disabled />
            {permissionWords.read}
          </label>
          {offered.map((act) => (
            <label key={act} className="tick">
              <input type="checkbox" checked={acts.includes(act)} onChange={() => turn(act)} />
              {permissionWords[act]}
            </label>
          ))}
        </div>
      )}
    </fieldset>
  );
}
