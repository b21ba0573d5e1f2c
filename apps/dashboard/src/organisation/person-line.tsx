import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { VesselName } from '../rule/own-rule.query.ts';
import { roleMeans, roleNames, people as words } from '../strings/people.ts';
import { formatDay } from '../ui/calendar.ts';
import { ChangePerson } from './change-person.tsx';
import { forWhich } from './for-which.ts';
import { useMay } from './may.ts';
import type { Person } from './people.query.ts';
import { sessionQuery } from './session.query.ts';

const { columns } = words;

/** Somebody who works here; for whoever manages people, with what changes that. */
export function PersonLine(props: { person: Person; vessels: readonly VesselName[]; onTold: (words: string) => void }) {
  const { person, vessels, onTold } = props;
  const [changing, setChanging] = useState(false);
  const may = useMay();
  const me = useQuery(sessionQuery()).data;
  const name = person.name ?? words.former;
  // Only an owner changes an owner; the API says so too.
  const mayChange = may.managePeople && (me?.role === 'owner' || person.role !== 'owner');
  return (
    <>
      <tr>
        <th scope="row">
          <span className="row-name">{name}</span>{' '}
          {me?.person?.id === person.id && <span className="quiet">({words.you})</span>}
          {person.email && <span className="sub">{person.email}</span>}
        </th>
        <td data-of={columns.role}>
          {roleNames[person.role]}
          <span className="sub">{roleMeans[person.role]}</span>
        </td>
        <td data-of={columns.vessels}>{forWhich(person.vesselIds, vessels)}</td>
        <td data-of={columns.since}>{formatDay(person.joinedAt.slice(0, 10))}</td>
        <td>
          {mayChange && !changing && (
            <button type="button" aria-label={words.changeOf(name)} onClick={() => setChanging(true)}>
              {words.change}
            </button>
          )}
        </td>
      </tr>
      {changing && (
        <tr className="changing">
          <td colSpan={5}>
            <ChangePerson
              person={person}
              name={name}
              onDone={(told) => {
                setChanging(false);
                if (told) onTold(told);
              }}
            />
          </td>
        </tr>
      )}
    </>
  );
}
