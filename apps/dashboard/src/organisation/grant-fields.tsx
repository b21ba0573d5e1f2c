/** What somebody may do, and for which vessels. */
import { useQuery } from '@tanstack/react-query';
import { vesselNamesQuery } from '../rule/own-rule.query.ts';
import { roleMeans, roleNames, people as words } from '../strings/people.ts';
import { ChoiceField } from '../ui/fields.tsx';
import type { Role } from './may.ts';
import type { Granted } from './people.query.ts';
import { sessionQuery } from './session.query.ts';

const ROLES: readonly Role[] = ['owner', 'manager', 'surveyor', 'yard', 'viewer'];
/** These are for the whole fleet: the API refuses to narrow them. */
const WHOLE: readonly Role[] = ['owner', 'manager'];

type Props = {
  id: string;
  granted: Granted;
  faults: Readonly<Record<string, string>>;
  onChange: (granted: Granted) => void;
};

export function GrantFields({ id, granted, faults, onChange }: Props) {
  const mine = useQuery(sessionQuery()).data?.role;
  const offered = ROLES.filter((role) => role !== 'owner' || mine === 'owner');
  const choose = (role: Role) => onChange({ role, vesselIds: WHOLE.includes(role) ? null : granted.vesselIds });
  return (
    <>
      <ChoiceField
        id={`${id}-role`}
        name={words.role}
        value={granted.role}
        fault={faults['role']}
        onChange={(role) => choose(role as Role)}
      >
        {offered.map((role) => (
          <option key={role} value={role}>
            {roleNames[role]}: {roleMeans[role]}
          </option>
        ))}
      </ChoiceField>
      {!WHOLE.includes(granted.role) && (
        <Narrow id={id} granted={granted} fault={faults['vesselIds']} onChange={onChange} />
      )}
    </>
  );
}

function Narrow(props: { id: string; granted: Granted; fault: string | undefined; onChange: Props['onChange'] }) {
  const { id, granted, fault, onChange } = props;
  const { data: vessels = [] } = useQuery(vesselNamesQuery());
  const chosen = granted.vesselIds;
  const turn = (vesselId: string) =>
    onChange({
      ...granted,
      vesselIds: chosen?.includes(vesselId)
        ? chosen.filter((each) => each !== vesselId)
        : [...(chosen ?? []), vesselId],
    });
  return (
    <fieldset className="plain" id={`${id}-vesselIds`} tabIndex={-1} aria-describedby={`${id}-vesselIds-fault`}>
      <legend className="field-name">{words.narrow}</legend>
      {([null, []] as const).map((vesselIds) => (
        <label key={String(vesselIds)} className="tick">
          <input
            type="radio"
            name={`${id}-narrow`}
            checked={(chosen === null) === (vesselIds === null)}
            onChange={() => onChange({ ...granted, vesselIds })}
          />
          {vesselIds === null ? words.all : words.only}
        </label>
      ))}
      {chosen && (
        <div className="ticks">
          {vessels.map((vessel) => (
            <label key={vessel.id} className="tick">
              <input type="checkbox" checked={chosen.includes(vessel.id)} onChange={() => turn(vessel.id)} />
              {vessel.name}
            </label>
          ))}
        </div>
      )}
      <p id={`${id}-vesselIds-fault`} className={fault ? 'field-fault' : undefined}>
        {fault}
      </p>
    </fieldset>
  );
}
