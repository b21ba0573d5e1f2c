import type { components } from '@garboard/client/generated/api.d.ts';
import type { Role } from '../organisation/may.ts';
import { permissionWords, strings } from '../strings/api-key.ts';

type Act = components['schemas']['PermissionCode'];

/** What may be left out of a role, as docs/roles.md has it; the API refuses anything else. Reading stays. */
const BESIDES_READING: Record<Role, readonly Act[]> = {
  owner: [
    'record_facts',
    'keep_register',
    'keep_rules',
    'manage_people',
    'read_audit',
    'share',
    'keep_keys',
    'keep_organisation',
  ],
  manager: ['record_facts', 'keep_register', 'keep_rules', 'manage_people', 'read_audit', 'share', 'keep_keys'],
  surveyor: ['record_facts'],
  yard: ['record_facts'],
  viewer: [],
};

/** `null`: all that the role may. */
export function ActsField(props: { role: Role; acts: Act[] | null; onChange: (acts: Act[] | null) => void }) {
  const { role, acts, onChange } = props;
  const offered = BESIDES_READING[role];
  if (offered.length === 0) return null;
  const turn = (act: Act) =>
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
