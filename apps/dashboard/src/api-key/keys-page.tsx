/** The keys of programs: what each may do, and making, renewing and revoking one. */
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { whyItFailed } from '../api/why-it-failed.ts';
import { Forbidden } from '../frame/forbidden.tsx';
import { useMay } from '../organisation/may.ts';
import { strings } from '../strings/api-key.ts';
import { Failed } from '../ui/failed.tsx';
import { Ledger } from '../ui/ledger.tsx';
import { PageHeader } from '../ui/page-header.tsx';
import { ShownOnce } from '../ui/shown-once.tsx';
import { Waiting } from '../ui/waiting.tsx';
import { type ApiKey, apiKeysQuery, type WithText } from './api-key.query.ts';
import { KeyLine } from './key-line.tsx';
import { NewKeyForm } from './new-key-form.tsx';
import './api-key.css';

export function KeysPage() {
  const may = useMay();
  if (!may.keepKeys) return <Forbidden permission="keepKeys" />;
  return <Keys />;
}

function Keys() {
  const { data, error, isPending, refetch } = useQuery(apiKeysQuery());
  const [shown, setShown] = useState<WithText>();
  const [told, setTold] = useState<string>();
  return (
    <>
      <PageHeader title={strings.title}>
        <p>{strings.intro}</p>
      </PageHeader>
      {shown?.key && (
        <ShownOnce
          words={{ ...strings, heading: strings.shown(shown.name), how: strings.shownHow }}
          text={shown.key}
          onShut={() => setShown(undefined)}
        />
      )}
      {isPending && <Waiting>{strings.waiting}</Waiting>}
      {!isPending && !data && <Failed what={strings.failed} why={whyItFailed(error)} again={refetch} />}
      {data?.length === 0 && (
        <div className="empty">
          <p className="voice">{strings.empty}</p>
          <p className="quiet">{strings.emptyHow}</p>
        </div>
      )}
      {data && data.length > 0 && <List keys={data} onShown={setShown} onTold={setTold} />}
      <p role="status">{told}</p>
      {data && <NewKeyForm onMade={setShown} />}
    </>
  );
}

type ListProps = { keys: readonly ApiKey[]; onShown: (key: WithText) => void; onTold: (words: string) => void };

function List({ keys, onShown, onTold }: ListProps) {
  const { name, may, until, used } = strings.columns;
  return (
    <Ledger caption={strings.caption} columns={[name, may, until, used]} className="keys" doing>
      {keys.map((key) => (
        <KeyLine key={key.id} apiKey={key} onShown={onShown} onTold={onTold} />
      ))}
    </Ledger>
  );
}
