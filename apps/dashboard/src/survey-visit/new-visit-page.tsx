/** Begins a visit: who came, what for, where and how she lies. */
import { useQuery, useQueryClient } from '@tanstack/react-query';
import { getRouteApi, Link, useNavigate } from '@tanstack/react-router';
import { Forbidden } from '../frame/forbidden.tsx';
import { NotHere } from '../frame/not-here.tsx';
import { useOnceKey } from '../item/use-once-key.ts';
import { useMay } from '../organisation/may.ts';
import { craftWords, purposeWords, strings, waterWords } from '../strings/survey-visit.ts';
import { readersToday } from '../ui/calendar.ts';
import { faultsOrDone } from '../ui/form-faults.ts';
import { PageHeader } from '../ui/page-header.tsx';
import { type Box, type FormFault, QuickForm, type Typed } from '../ui/quick-form.tsx';
import { Waiting } from '../ui/waiting.tsx';
import { vesselQuery } from '../vessel/vessel.query.ts';
import { newVisitOf } from './new-visit-of.ts';
import { startVisit } from './visit.query.ts';

const route = getRouteApi('/vessels/$vesselId/visit');
const { start, one } = strings;

const choice = (key: string, name: string, choices: Readonly<Record<string, string>>): Box => ({
  ...{ key, name, kind: 'choice', choices, start: Object.keys(choices)[0] ?? '' },
});
const text = (key: string, name: string, more: Partial<Box> = {}): Box => ({ key, name, optional: true, ...more });
const measures = ({ maker }: Typed) => (maker ?? '').trim() !== '';

const BOXES = (): Box[] => [
  { ...choice('purpose', start.purpose, purposeWords), start: 'condition' },
  { key: 'startedOn', name: start.startedOn, kind: 'day', start: readersToday() },
  choice('craft', start.craft, craftWords),
  { ...choice('water', start.water, waterWords), start: 'ashore' },
  text('ashoreSince', start.ashoreSince, { kind: 'day', when: ({ water }) => water !== 'afloat' }),
  text('place', start.place),
  text('client', start.client),
  text('instructions', start.instructions, { kind: 'long' }),
  text('weather', start.weather),
  text('surveyor', start.surveyor),
  text('qualification', start.qualification, { when: ({ surveyor }) => (surveyor ?? '').trim() !== '' }),
  choice('ownerAttended', start.ownerAttended, { no: start.no, yes: start.yes }),
  text('maker', start.maker, { help: start.makerHelp }),
  { key: 'model', name: start.model, when: measures },
  text('scale', start.scale, { when: measures }),
  text('nextCheckOn', start.nextCheckOn, { kind: 'day', when: measures }),
];

export function NewVisitPage() {
  const { vesselId } = route.useParams();
  const may = useMay();
  const vessel = useQuery(vesselQuery(vesselId));
  const queries = useQueryClient();
  const navigate = useNavigate();
  const keyFor = useOnceKey();
  if (!may.survey) return <Forbidden permission="survey" />;
  if (vessel.isError) return <NotHere />;
  if (!vessel.data) return <Waiting>{one.waiting}</Waiting>;
  const submit = async (typed: Typed): Promise<readonly FormFault[] | null> => {
    const read = newVisitOf(typed);
    if (!read.ok) return read.faults;
    return faultsOrDone(async () => {
      const { id } = await startVisit(vesselId, read.value, keyFor(read.value));
      await queries.invalidateQueries({ queryKey: ['visits'] });
      await navigate({ to: '/visits/$visitId', params: { visitId: id } });
    });
  };
  return (
    <>
      <PageHeader title={start.title(vessel.data.name)}>
        <p>{start.intro}</p>
        <p>
          <Link to="/vessels/$vesselId" params={{ vesselId }}>
            {start.back}
          </Link>
        </p>
      </PageHeader>
      <QuickForm id="visit" boxes={BOXES()} submit={start.submit} onSubmit={submit} />
    </>
  );
}
