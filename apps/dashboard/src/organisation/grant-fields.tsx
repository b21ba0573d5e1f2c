/** What somebody may do, and for which vessels. */
import { useQuery } from '@tanstack/react-query';
import { roleMeans, roleNames, people as words } from '../strings/people.ts';
import { ChoiceField } from '../ui/fields.tsx';
import { WhichVessels } from '../vessel/which-vessels.tsx';
import type { Role } from './may.ts';
import type { Granted } from './people.query.ts';
import { sessionQuery } from './session.query.ts';

const ROLES: readonly Role[] = ['owner', 'manager', 'surveyor', 'yard', 'viewer'];
/** These are for the whole fleet: the API refuses to narrow them. */
const WHOLE: readonly Role[] = ['owner', 'manager'];

/** What its boxes are called, for the head of a form. */
export const GRANT_NAMES = { role: words.role, vesselIds: words.narrow };

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
        <WhichVessels
          id={`${id}-vesselIds`}
          words={{ legend: words.narrow, all: words.all, only: words.only }}
          chosen={granted.vesselIds}
          fault={faults['vesselIds']}
          onChange={(vesselIds) => onChange({ ...granted, vesselIds })}
        />
      )}
    </>
  );
}
