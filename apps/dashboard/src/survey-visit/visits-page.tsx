/** Survey visits across the fleet, the latest first. */
import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { whyItFailed } from '../api/why-it-failed.ts';
import { useMay } from '../organisation/may.ts';
import { purposeWords, strings } from '../strings/survey-visit.ts';
import { formatDay } from '../ui/calendar.ts';
import { Day } from '../ui/day.tsx';
import { Failed } from '../ui/failed.tsx';
import { Ledger } from '../ui/ledger.tsx';
import { PageHeader } from '../ui/page-header.tsx';
import { Waiting } from '../ui/waiting.tsx';
import { type Visit, visitsQuery } from './visit.query.ts';

const { list } = strings;
const { columns } = list;

export function VisitsPage() {
  const { data, error, isPending, refetch } = useQuery(visitsQuery());
  const may = useMay();
  const open = data?.filter(({ state }) => state === 'open').length;
  return (
    <>
      <PageHeader
        title={list.title}
        acts={
          may.survey && (
            <Link to="/survey-routes/$craft" params={{ craft: 'sailing_yacht' }} className="button">
              {strings.routes.link}
            </Link>
          )
        }
      >
        {open !== undefined && <p className="answer">{list.answer(open)}</p>}
      </PageHeader>
      {isPending && <Waiting>{list.waiting}</Waiting>}
      {!isPending && !data && <Failed what={list.failed} why={whyItFailed(error)} again={refetch} />}
      {data?.length === 0 && (
        <div className="empty">
          <p className="voice">{list.empty}</p>
          <p className="quiet">{list.emptyHow}</p>
        </div>
      )}
      {data && data.length > 0 && (
        <Ledger caption={list.caption} columns={Object.values(columns)}>
          {data.map((visit) => (
            <VisitLine key={visit.id} visit={visit} />
          ))}
        </Ledger>
      )}
    </>
  );
}

function VisitLine({ visit }: { visit: Visit }) {
  const { id, startedOn, vessel, purpose, persons, completedOn } = visit;
  const by = persons.find(({ capacity }) => capacity === 'surveyor') ?? persons[0];
  return (
    <tr>
      <td data-of={columns.day}>
        <Link to="/visits/$visitId" params={{ visitId: id }}>
          <Day on={startedOn} />
        </Link>
      </td>
      <td data-of={columns.vessel}>
        <Link to="/vessels/$vesselId" params={{ vesselId: vessel.id }} className="vessel-name">
          {vessel.name}
        </Link>
      </td>
      <td data-of={columns.purpose}>{purposeWords[purpose]}</td>
      <td data-of={columns.by}>{by ? by.name : <span className="quiet">{list.nobody}</span>}</td>
      <td data-of={columns.state}>{completedOn ? list.completed(formatDay(completedOn)) : list.open}</td>
    </tr>
  );
}
