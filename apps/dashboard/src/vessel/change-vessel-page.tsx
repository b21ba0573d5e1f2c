/** What is known of a vessel: what she is, what she is kept under, how she is identified. */
import { isStatus } from '@garboard/client/api-problem.ts';
import { useQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import { whyItFailed } from '../api/why-it-failed.ts';
import { Forbidden } from '../frame/forbidden.tsx';
import { NotHere } from '../frame/not-here.tsx';
import { useMay } from '../organisation/may.ts';
import { schemesQuery } from '../rule/rule.query.ts';
import { strings } from '../strings/change-vessel.ts';
import { strings as vesselStrings } from '../strings/vessel.ts';
import { Failed } from '../ui/failed.tsx';
import { PageHeader } from '../ui/page-header.tsx';
import { Waiting } from '../ui/waiting.tsx';
import { ChangeVesselForm } from './change-vessel-form.tsx';
import { versionedVesselQuery } from './vessel.query.ts';
import '../item/record.css';
import './new-vessel.css';

const route = getRouteApi('/vessels/$vesselId/change');

export function ChangeVesselPage() {
  const { vesselId } = route.useParams();
  const { data, error, isPending, refetch } = useQuery(versionedVesselQuery(vesselId));
  const schemes = useQuery(schemesQuery());
  if (!useMay().keepRegister) return <Forbidden permission="keepRegister" />;
  if (isPending || schemes.isPending) return <Waiting>{vesselStrings.waiting}</Waiting>;
  if (isStatus(error, 404)) return <NotHere />;
  if (!data || !schemes.data)
    return <Failed what={vesselStrings.failed} why={whyItFailed(error ?? schemes.error)} again={refetch} />;
  const { data: vessel, version } = data;
  return (
    <>
      <PageHeader title={strings.title(vessel.name)}>
        <p>
          <Link to="/vessels/$vesselId" params={{ vesselId }}>
            {strings.back}
          </Link>
        </p>
        <p>{strings.intro}</p>
      </PageHeader>
      <ChangeVesselForm vessel={vessel} version={version} schemes={schemes.data} />
    </>
  );
}
