/** Every notice that was entered, and how many things still wait for an answer under each. */
import { useQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import { whyItFailed } from '../api/why-it-failed.ts';
import { useMay } from '../organisation/may.ts';
import { strings } from '../strings/safety-notice.ts';
import { Day } from '../ui/day.tsx';
import { Failed } from '../ui/failed.tsx';
import { PageHeader } from '../ui/page-header.tsx';
import { Waiting } from '../ui/waiting.tsx';
import { WordChoice } from '../ui/word-choice.tsx';
import { noticesQuery, type SafetyNotice } from './notice.query.ts';
import { readNoticesSearch } from './notice-search.ts';
import { markOf } from './notice-words.ts';
import './safety-notice.css';

const route = getRouteApi('/notices');
const { list } = strings;
const { columns } = list;

export function NoticesPage() {
  const { state = 'open' } = route.useSearch();
  const navigate = route.useNavigate();
  const may = useMay();
  const open = useQuery(noticesQuery('open')).data;
  const { data, error, isPending, refetch } = useQuery(noticesQuery(state === 'all' ? undefined : state));
  return (
    <>
      <PageHeader title={list.title} acts={may.keepRegister && <Enter />}>
        {open && <p>{list.answer(waitingUnder(open), open.length)}</p>}
        <p>{list.caution}</p>
      </PageHeader>
      <search className="filters" aria-label={list.filters}>
        <WordChoice
          name={list.state}
          any={list.any}
          value={state === 'all' ? undefined : state}
          choices={Object.entries(strings.states).map(([value, words]) => ({ value, words }))}
          onChoose={(value = 'all') => void navigate({ search: readNoticesSearch({ state: value }), replace: true })}
        />
      </search>
      {isPending && <Waiting>{list.waiting}</Waiting>}
      {!isPending && !data && <Failed what={list.failed} why={whyItFailed(error)} again={refetch} />}
      {data && (data.length === 0 ? <Empty /> : <Notices notices={data} />)}
    </>
  );
}

const waitingUnder = (notices: readonly SafetyNotice[]) =>
  notices.reduce((sum, { counts }) => sum + counts.affected + counts.mayBeAffected, 0);

function Enter() {
  return (
    <Link to="/notices/new" className="button first">
      {list.enter}
    </Link>
  );
}

function Empty() {
  return (
    <div className="empty">
      <p className="voice">{list.empty}</p>
      <p className="quiet">{list.emptyHow}</p>
    </div>
  );
}

function Notices({ notices }: { notices: readonly SafetyNotice[] }) {
  return (
    <table className="notices">
      <caption className="out-of-sight">{list.caption}</caption>
      <thead>
        <tr>
          <th scope="col">{columns.notice}</th>
          <th scope="col">{columns.issued}</th>
          <th scope="col">{columns.due}</th>
          {[columns.waiting, columns.look, columns.answered].map((column) => (
            <th key={column} scope="col" className="number">
              {column}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {notices.map((notice) => (
          <NoticeLine key={notice.id} notice={notice} />
        ))}
      </tbody>
    </table>
  );
}

function NoticeLine({ notice }: { notice: SafetyNotice }) {
  const { affected, mayBeAffected, answered } = notice.counts;
  return (
    <tr>
      <th scope="row">
        <Link to="/notices/$noticeId" params={{ noticeId: notice.id }} className="notice-title">
          {notice.title}
        </Link>
        <span className="sub">
          {[notice.publisher, notice.reference, notice.withdrawn && strings.states.withdrawn]
            .filter(Boolean)
            .join(' · ')}
        </span>
      </th>
      <td data-of={columns.issued}>
        <Day on={notice.issuedOn} />
      </td>
      <td data-of={columns.due}>
        {notice.deadline.kind === 'before_next_use' ? strings.deadline.before_next_use : <Day on={notice.dueOn} />}
      </td>
      <Count of={columns.waiting} count={affected} mark={markOf(notice, 'affected')} />
      <Count of={columns.look} count={mayBeAffected} mark={markOf(notice, 'may_be_affected')} />
      <Count of={columns.answered} count={answered} mark={markOf(notice, 'answered')} />
    </tr>
  );
}

function Count({ of, count, mark }: { of: string; count: number; mark: string }) {
  return (
    <td className={count === 0 ? 'number none' : 'number'} data-of={of}>
      {count === 0 ? <span className="quiet">–</span> : <span className={`standing ${mark}`}>{count}</span>}
    </td>
  );
}
