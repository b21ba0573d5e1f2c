/** When the boats are used most: a band on the fleet's horizon, said once for the organisation. */
import { useQuery } from '@tanstack/react-query';
import { whyItFailed } from '../api/why-it-failed.ts';
import { Forbidden } from '../frame/forbidden.tsx';
import { strings } from '../strings/season.ts';
import { Failed } from '../ui/failed.tsx';
import { PageHeader } from '../ui/page-header.tsx';
import { Waiting } from '../ui/waiting.tsx';
import { useMay } from './may.ts';
import { seasonQuery } from './season.query.ts';
import { SeasonForm } from './season-form.tsx';

export function SeasonPage() {
  const { data, error, isPending, refetch } = useQuery(seasonQuery());
  if (!useMay().keepRegister) return <Forbidden permission="keepRegister" />;
  return (
    <>
      <PageHeader title={strings.title}>
        <p>{strings.intro}</p>
      </PageHeader>
      {isPending && <Waiting>{strings.waiting}</Waiting>}
      {!isPending && !data && <Failed what={strings.failed} why={whyItFailed(error)} again={refetch} />}
      {data && <SeasonForm season={data.data.season} version={data.version} />}
    </>
  );
}
