/** A view's own address: opens the page that it is a view of, with its filters. */
import { isStatus } from '@garboard/client/api-problem.ts';
import { useQuery } from '@tanstack/react-query';
import { getRouteApi, Navigate } from '@tanstack/react-router';
import { whyItFailed } from '../api/why-it-failed.ts';
import { readDueSearch } from '../due-list/due-search.ts';
import { readFleetSearch } from '../fleet/fleet-search.ts';
import { NotHere } from '../frame/not-here.tsx';
import { strings } from '../strings/saved-view.ts';
import { Failed } from '../ui/failed.tsx';
import { Waiting } from '../ui/waiting.tsx';
import { savedViewQuery } from './saved-view.query.ts';

const route = getRouteApi('/views/$viewId');

export function ViewPage() {
  const { viewId } = route.useParams();
  const { data, error, isPending, refetch } = useQuery(savedViewQuery(viewId));
  if (isPending) return <Waiting>{strings.waiting}</Waiting>;
  if (isStatus(error, 404)) return <NotHere />;
  if (!data) return <Failed what={strings.failed} why={whyItFailed(error)} again={refetch} />;
  const search = { ...data.filters, view: viewId };
  return data.page === 'due' ? (
    <Navigate to="/due" search={readDueSearch(search)} replace />
  ) : (
    <Navigate to="/" search={readFleetSearch(search)} replace />
  );
}
