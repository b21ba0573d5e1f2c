/** The organisations somebody belongs to: go to another, or leave the one they are at. */
import { useQuery } from '@tanstack/react-query';
import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { account } from '../strings/account.ts';
import { roleNames } from '../strings/people.ts';
import { type Belonging, belongingsQuery, leaveOrganisation, switchTo } from './account.query.ts';
import { useComeIn } from './use-come-in.ts';
import { useTrying } from './use-trying.ts';

const { belongings: words } = account;

export function Belongings({ here }: { here: string | undefined }) {
  const { data = [] } = useQuery(belongingsQuery());
  return (
    <ul className="rows">
      {data.map((each) => (
        <Line key={each.id} belonging={each} isHere={each.id === here} />
      ))}
    </ul>
  );
}

function Line({ belonging: { id, name, role }, isHere }: { belonging: Belonging; isHere: boolean }) {
  const [leaving, setLeaving] = useState(false);
  const { trying, fault } = useTrying();
  const comeIn = useComeIn();
  const navigate = useNavigate();
  const arrive = (act: () => Promise<unknown>) =>
    trying(async () => {
      await act();
      await navigate({ to: '/' });
      await comeIn();
    });
  return (
    <li>
      <div>
        <strong>{name}</strong> <span className="quiet">{words.as(roleNames[role])}</span>
        {leaving && <p className="quiet">{words.leaveHow(name)}</p>}
        <p role="status">{fault}</p>
      </div>
      <div className="acts">
        {!isHere && (
          <button type="button" aria-label={words.goTo(name)} onClick={() => arrive(() => switchTo(id))}>
            {words.go}
          </button>
        )}
        {isHere && !leaving && (
          <>
            <span className="quiet">{words.here}</span>
            <button type="button" onClick={() => setLeaving(true)}>
              {words.leave}
            </button>
          </>
        )}
        {leaving && (
          <>
            <button type="button" onClick={() => arrive(leaveOrganisation)}>
              {words.leaveFor}
            </button>
            <button type="button" onClick={() => setLeaving(false)}>
              {words.stay}
            </button>
          </>
        )}
      </div>
    </li>
  );
}
