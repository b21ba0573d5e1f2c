/** Who works here, what they may do, and who is invited. */
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { whyItFailed } from '../api/why-it-failed.ts';
import { vesselNamesQuery } from '../rule/own-rule.query.ts';
import { people as words } from '../strings/people.ts';
import { Failed } from '../ui/failed.tsx';
import { Ledger } from '../ui/ledger.tsx';
import { PageHeader } from '../ui/page-header.tsx';
import { Waiting } from '../ui/waiting.tsx';
import { Invitations } from './invitations.tsx';
import { useMay } from './may.ts';
import { type Person, peopleQuery } from './people.query.ts';
import { PersonLine } from './person-line.tsx';
import './people.css';

const { columns } = words;

export function PeoplePage() {
  const { data, error, isPending, refetch } = useQuery(peopleQuery());
  const may = useMay();
  const [told, setTold] = useState<string>();
  return (
    <>
      <PageHeader title={words.title}>{data && <p>{words.answer(data.length)}</p>}</PageHeader>
      {isPending && <Waiting>{words.waiting}</Waiting>}
      {!isPending && !data && <Failed what={words.failed} why={whyItFailed(error)} again={refetch} />}
      {data && <List people={data} onTold={setTold} />}
      <p role="status">{told}</p>
      {data && may.managePeople && <Invitations onTold={setTold} />}
    </>
  );
}

function List({ people, onTold }: { people: readonly Person[]; onTold: (words: string) => void }) {
  const { data: vessels = [] } = useQuery(vesselNamesQuery());
  return (
    <Ledger
      caption={words.caption}
      columns={[columns.name, columns.role, columns.vessels, columns.since]}
      className="people"
      doing
    >
      {people.map((person) => (
        <PersonLine key={person.id} person={person} vessels={vessels} onTold={onTold} />
      ))}
    </Ledger>
  );
}
