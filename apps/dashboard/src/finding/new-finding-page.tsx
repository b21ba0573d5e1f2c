/** Enters something that is not right; what may be on record already is offered first. */

import { useQuery, useQueryClient } from '@tanstack/react-query';
import { getRouteApi, Link, useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { readAnew } from '../api/read-anew.ts';
import { pictureBox } from '../evidence/picture-box.tsx';
import { Forbidden } from '../frame/forbidden.tsx';
import { NotHere } from '../frame/not-here.tsx';
import { itemsQuery } from '../item/item.query.ts';
import { useOnceKey } from '../item/use-once-key.ts';
import { useMay } from '../organisation/may.ts';
import { strings } from '../strings/finding.ts';
import { readersToday } from '../ui/calendar.ts';
import { faultsOrDone } from '../ui/form-faults.ts';
import { PageHeader } from '../ui/page-header.tsx';
import { type Box, type FormFault, QuickForm, type Typed } from '../ui/quick-form.tsx';
import { Waiting } from '../ui/waiting.tsx';
import { vesselQuery } from '../vessel/vessel.query.ts';
import { described, estimate } from './act-boxes.ts';
import { Alike } from './alike.tsx';
import { enterFinding } from './finding.query.ts';
import { newFindingOf } from './new-finding-of.ts';
import './finding.css';

const route = getRouteApi('/vessels/$vesselId/finding');
const { fresh, boxes, one } = strings;

export function NewFindingPage() {
  const { vesselId } = route.useParams();
  const may = useMay();
  const vessel = useQuery(vesselQuery(vesselId));
  const items = useQuery(itemsQuery(vesselId));
  if (!may.answerFindings) return <Forbidden permission="answerFindings" />;
  if (vessel.isError) return <NotHere />;
  if (!vessel.data || !items.data) return <Waiting>{one.waiting}</Waiting>;
  const aboard = Object.fromEntries(items.data.map(({ id, label }) => [id, label]));
  const all: Box[] = [
    ...described(),
    {
      key: 'itemId',
      name: boxes.thingAboard,
      kind: 'choice',
      choices: { '': boxes.thingAboardNone, ...aboard },
      optional: true,
    },
    { key: 'on', name: boxes.foundOn, kind: 'day', start: readersToday() },
    ...estimate,
    { key: 'responsible', name: boxes.responsible, optional: true },
    pictureBox(vesselId, {}, { optional: true }),
  ];
  return (
    <>
      <PageHeader title={fresh.title(vessel.data.name)}>
        <p>{fresh.intro}</p>
        <p>
          <Link to="/vessels/$vesselId" params={{ vesselId }}>
            {fresh.back}
          </Link>
        </p>
      </PageHeader>
      <Form vesselId={vesselId} all={all} />
    </>
  );
}

function Form({ vesselId, all }: { vesselId: string; all: readonly Box[] }) {
  const [typed, setTyped] = useState<Typed>({});
  const queries = useQueryClient();
  const navigate = useNavigate();
  const keyFor = useOnceKey();
  const submit = async (now: Typed): Promise<readonly FormFault[] | null> => {
    const read = newFindingOf(now);
    if (!read.ok) return read.faults;
    return faultsOrDone(async () => {
      const { id } = await enterFinding(vesselId, read.value, keyFor(read.value));
      await readAnew(queries);
      await navigate({ to: '/findings/$findingId', params: { findingId: id } });
    });
  };
  return (
    <div className="new-finding">
      <QuickForm id="finding" boxes={all} submit={fresh.submit} onSubmit={submit} onTyped={setTyped} />
      <Alike vesselId={vesselId} typed={typed} />
    </div>
  );
}
