/** What is shown to outsiders: every link, and making and revoking one. */
import { useQuery } from '@tanstack/react-query';
import { getRouteApi } from '@tanstack/react-router';
import { useState } from 'react';
import { whyItFailed } from '../api/why-it-failed.ts';
import { Forbidden } from '../frame/forbidden.tsx';
import { useMay } from '../organisation/may.ts';
import { strings } from '../strings/share.ts';
import { Failed } from '../ui/failed.tsx';
import { Ledger } from '../ui/ledger.tsx';
import { PageHeader } from '../ui/page-header.tsx';
import { ShownOnce } from '../ui/shown-once.tsx';
import { Waiting } from '../ui/waiting.tsx';
import { NewShareForm } from './new-share-form.tsx';
import { type ShareLink, shareLinksQuery, type WithToken } from './share.query.ts';
import { ShareLine } from './share-line.tsx';
import './share.css';

const route = getRouteApi('/shares');
const { columns } = strings;

export function SharesPage() {
  const may = useMay();
  if (!may.share) return <Forbidden permission="share" />;
  return <Shares />;
}

function Shares() {
  const { vessel } = route.useSearch();
  const { data, error, isPending, refetch } = useQuery(shareLinksQuery());
  const [shown, setShown] = useState<WithToken>();
  const [told, setTold] = useState<string>();
  return (
    <>
      <PageHeader title={strings.title}>
        <p>{strings.intro}</p>
      </PageHeader>
      {shown?.token && (
        <ShownOnce
          words={{ ...strings, heading: strings.shown(shown.label), how: strings.shownHow }}
          text={`${window.location.origin}/shared#${shown.token}`}
          onShut={() => setShown(undefined)}
        />
      )}
      {isPending && <Waiting>{strings.waiting}</Waiting>}
      {!isPending && !data && <Failed what={strings.failed} why={whyItFailed(error)} again={refetch} />}
      {data?.length === 0 && !shown && (
        <div className="empty">
          <p className="voice">{strings.empty}</p>
          <p className="quiet">{strings.emptyHow}</p>
        </div>
      )}
      {data && data.length > 0 && <List links={data} onTold={setTold} />}
      <p role="status">{told}</p>
      {data && <NewShareForm key={vessel} vessel={vessel} onMade={setShown} />}
    </>
  );
}

function List({ links, onTold }: { links: readonly ShareLink[]; onTold: (words: string) => void }) {
  return (
    <Ledger caption={strings.caption} columns={[columns.label, columns.shows, columns.until, columns.looks]} doing>
      {links.map((link) => (
        <ShareLine key={link.id} link={link} onTold={onTold} />
      ))}
    </Ledger>
  );
}
