/** What a thing is: its name, its place, its plate, and what its rules ask besides dates. */
import { isStatus } from '@garboard/client/api-problem.ts';
import { useQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import { whyItFailed } from '../api/why-it-failed.ts';
import { Forbidden } from '../frame/forbidden.tsx';
import { NotHere } from '../frame/not-here.tsx';
import { useMay } from '../organisation/may.ts';
import { strings } from '../strings/record.ts';
import { strings as vesselStrings } from '../strings/vessel.ts';
import { Failed } from '../ui/failed.tsx';
import { PageHeader } from '../ui/page-header.tsx';
import { Waiting } from '../ui/waiting.tsx';
import { itemKindsQuery } from './catalogue.query.ts';
import { ChangeForm } from './change-form.tsx';
import { itemQuery } from './item.query.ts';
import './record.css';

const route = getRouteApi('/items/$itemId/change');

export function ChangePage() {
  const { itemId } = route.useParams();
  const { data, error, isPending, refetch } = useQuery(itemQuery(itemId));
  const kinds = useQuery(itemKindsQuery());
  const may = useMay();
  if (!may.keepRegister) return <Forbidden permission="keepRegister" />;
  if (isPending || kinds.isPending) return <Waiting>{vesselStrings.waiting}</Waiting>;
  if (isStatus(error, 404)) return <NotHere />;
  if (!data || !kinds.data)
    return <Failed what={vesselStrings.failed} why={whyItFailed(error ?? kinds.error)} again={refetch} />;
  const { data: item, version } = data;
  const known = kinds.data.find(({ id }) => id === item.kind)?.attributes ?? [];
  return (
    <>
      <PageHeader title={strings.change.title(item.label)}>
        <p>
          <Link to="/vessels/$vesselId" params={{ vesselId: item.vesselId }} search={{ thing: item.id }}>
            {strings.change.back}
          </Link>
        </p>
        <p>{strings.change.intro}</p>
      </PageHeader>
      <ChangeForm item={item} version={version} known={known} />
    </>
  );
}
