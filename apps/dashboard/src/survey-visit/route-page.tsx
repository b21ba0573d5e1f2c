/** In which order the organisation's people walk a sort of boat. Visits that have begun keep the route they walk. */
import { useQuery, useQueryClient } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import { type FormEvent, useState } from 'react';
import { whyItFailed } from '../api/why-it-failed.ts';
import { Forbidden } from '../frame/forbidden.tsx';
import { useMay } from '../organisation/may.ts';
import { craftWords, strings } from '../strings/survey-visit.ts';
import { Failed } from '../ui/failed.tsx';
import { TextField } from '../ui/fields.tsx';
import { PageHeader } from '../ui/page-header.tsx';
import { Waiting } from '../ui/waiting.tsx';
import { WordChoice } from '../ui/word-choice.tsx';
import { added, moved, type Place, renamed } from './route-draft.ts';
import { type Craft, routeQuery, setRoute } from './visit.query.ts';
import './survey-visit.css';

const route = getRouteApi('/survey-routes/$craft');
const { routes } = strings;

export function RoutePage() {
  const { craft } = route.useParams();
  const navigate = route.useNavigate();
  const may = useMay();
  const { data, error, isPending, refetch } = useQuery(routeQuery(craft as Craft));
  // Above the editor, which begins anew with each version: what was said of the last one outlives it.
  const [told, setTold] = useState('');
  if (!may.survey) return <Forbidden permission="survey" />;
  return (
    <>
      <PageHeader title={routes.title}>
        <p>{routes.intro}</p>
        <p>
          <Link to="/visits">{routes.back}</Link>
        </p>
      </PageHeader>
      <search className="filters">
        <WordChoice
          name={routes.craft}
          any={craftWords.sailing_yacht}
          value={craft === 'sailing_yacht' ? undefined : craft}
          choices={Object.entries(craftWords)
            .filter(([code]) => code !== 'sailing_yacht')
            .map(([value, words]) => ({ value, words }))}
          onChoose={(value) => {
            setTold('');
            void navigate({ params: { craft: value ?? 'sailing_yacht' }, replace: true });
          }}
        />
      </search>
      {isPending && <Waiting>{routes.waiting}</Waiting>}
      {!isPending && !data && <Failed what={routes.failed} why={whyItFailed(error)} again={refetch} />}
      {data && (
        <Editor
          key={`${craft} ${data.version}`}
          craft={craft as Craft}
          zones={data.data.zones}
          version={data.version}
          onTold={setTold}
        />
      )}
      <p role="status">{told}</p>
    </>
  );
}

type EditorProps = {
  craft: Craft;
  zones: readonly Place[];
  version: string;
  onTold: (words: string) => void;
};

function Editor({ craft, zones, version, onTold }: EditorProps) {
  const [places, setPlaces] = useState<readonly Place[]>(zones);
  const [name, setName] = useState('');
  const [fault, setFault] = useState<string>();
  const queries = useQueryClient();
  const isChanged = JSON.stringify(places) !== JSON.stringify(zones);
  const add = (event: FormEvent) => {
    event.preventDefault();
    const next = added(places, name);
    setFault(next ? undefined : routes.notAdded);
    if (!next) return;
    setPlaces(next);
    setName('');
  };
  const save = async () => {
    try {
      await setRoute(craft, places, version);
      onTold(routes.saved);
      await queries.invalidateQueries({ queryKey: ['survey-route', craft] });
    } catch (error) {
      onTold(whyItFailed(error));
    }
  };
  return (
    <>
      <ol className="route-places">
        {places.map((place, at) => (
          <li key={place.zone}>
            <input
              aria-label={routes.nameOf(at + 1)}
              value={place.name}
              onChange={({ currentTarget }) => setPlaces(renamed(places, at, currentTarget.value))}
            />
            <button
              type="button"
              disabled={at === 0}
              aria-label={routes.up(place.name)}
              onClick={() => setPlaces(moved(places, at, -1))}
            >
              ↑
            </button>
            <button
              type="button"
              disabled={at === places.length - 1}
              aria-label={routes.down(place.name)}
              onClick={() => setPlaces(moved(places, at, 1))}
            >
              ↓
            </button>
            <button
              type="button"
              disabled={places.length === 1}
              aria-label={routes.out(place.name)}
              onClick={() => setPlaces(places.filter((each) => each !== place))}
            >
              ×
            </button>
          </li>
        ))}
      </ol>
      <form className="form route-add" onSubmit={add} noValidate>
        <TextField id="route-add" name={routes.add} fault={fault} value={name} onChange={setName} />
        <p className="acts">
          <button type="submit">{routes.addIt}</button>
        </p>
      </form>
      <p className="acts">
        <button type="button" className="first" disabled={!isChanged} onClick={() => void save()}>
          {routes.save}
        </button>
        <button type="button" disabled={!isChanged} onClick={() => setPlaces(zones)}>
          {routes.leave}
        </button>
      </p>
    </>
  );
}
