/** One notice: what it says, which things aboard it covers, and what was answered. */
import { isStatus } from '@garboard/client/api-problem.ts';
import { useQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import { whyItFailed } from '../api/why-it-failed.ts';
import { NotHere } from '../frame/not-here.tsx';
import { itemKindsQuery } from '../item/catalogue.query.ts';
import { KindCaution } from '../item/kind-caution.tsx';
import { useMay } from '../organisation/may.ts';
import { strings } from '../strings/safety-notice.ts';
import { formatDay } from '../ui/calendar.ts';
import { Caution } from '../ui/caution.tsx';
import { Failed } from '../ui/failed.tsx';
import { PageHeader } from '../ui/page-header.tsx';
import { Waiting } from '../ui/waiting.tsx';
import { noticeItemsQuery, noticeQuery, type SafetyNotice } from './notice.query.ts';
import { NoticeThings } from './notice-things.tsx';
import { coverageInWords, deadlineInWords } from './notice-words.ts';
import { Withdraw } from './withdraw.tsx';
import './safety-notice.css';

const route = getRouteApi('/notices/$noticeId');
const { one } = strings;

export function NoticePage() {
  const { noticeId } = route.useParams();
  const { data: notice, error, isPending, refetch } = useQuery(noticeQuery(noticeId));
  const items = useQuery(noticeItemsQuery(noticeId));
  const may = useMay();
  if (isStatus(error, 404)) return <NotHere />;
  if (isPending || items.isPending) return <Waiting>{one.waiting}</Waiting>;
  if (!notice || !items.data)
    return (
      <Failed
        what={one.failed}
        why={whyItFailed(error ?? items.error)}
        again={() => void Promise.all([refetch(), items.refetch()])}
      />
    );
  const waiting = items.data.filter(({ state }) => state !== 'answered');
  return (
    <>
      <PageHeader title={notice.title}>
        <p>
          <Link to="/notices">{one.back}</Link>
        </p>
        <p>
          {notice.withdrawn
            ? one.withdrawn(formatDay(notice.withdrawn.on), notice.withdrawn.reason)
            : one.sentence(waiting.length, new Set(waiting.map(({ vessel }) => vessel.id)).size)}
        </p>
      </PageHeader>
      <div className="notice">
        <div>
          {!notice.withdrawn && <Caution>{one.first}</Caution>}
          {notice.kinds.map((kind) => (
            <KindCaution key={kind} kind={kind} />
          ))}
          <NoticeThings notice={notice} items={items.data} />
        </div>
        <Side notice={notice} mayWithdraw={may.keepRegister} />
      </div>
    </>
  );
}

function Side({ notice, mayWithdraw }: { notice: SafetyNotice; mayWithdraw: boolean }) {
  const kinds = useQuery(itemKindsQuery()).data ?? [];
  const names = notice.kinds.map((kind) => kinds.find(({ id }) => id === kind)?.name ?? kind);
  return (
    <aside className="notice-side">
      <h2>{one.hazard}</h2>
      <p>{notice.hazard}</p>
      <h2>{one.ask}</h2>
      <p>
        {notice.action.words}, {deadlineInWords(notice)}. {one[notice.weight]}
      </p>
      <h2>{one.covers}</h2>
      <ul>
        {coverageInWords(notice, names).map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <h2>{one.source}</h2>
      <p>
        {[notice.publisher, notice.reference, formatDay(notice.issuedOn), notice.document].filter(Boolean).join(', ')}.{' '}
        {notice.address && <a href={notice.address}>{notice.address}</a>}
      </p>
      {mayWithdraw && !notice.withdrawn && <Withdraw notice={notice} />}
    </aside>
  );
}
