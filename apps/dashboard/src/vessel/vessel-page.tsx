/** One vessel: what must happen before anybody uses her, then every thing aboard by place. */

import { isStatus } from '@garboard/client/api-problem.ts';
import { useQueries } from '@tanstack/react-query';
import { getRouteApi } from '@tanstack/react-router';
import { whyItFailed } from '../api/why-it-failed.ts';
import { ChangesLink } from '../audit/changes-link.tsx';
import { type DueRow, vesselDueQuery } from '../due-list/due.query.ts';
import { type Finding, vesselFindingsQuery } from '../finding/finding.query.ts';
import { NotHere } from '../frame/not-here.tsx';
import type { Item } from '../item/item.query.ts';
import { itemsQuery } from '../item/item.query.ts';
import { strings } from '../strings/vessel.ts';
import { Failed } from '../ui/failed.tsx';
import { Waiting } from '../ui/waiting.tsx';
import { BeforeUse } from './before-use.tsx';
import { Identifiers } from './identifiers.tsx';
import { Places } from './places.tsx';
import { vesselQuery } from './vessel.query.ts';
import { VesselHeader } from './vessel-header.tsx';
import type { VesselSearch } from './vessel-search.ts';
import './vessel.css';

const route = getRouteApi('/vessels/$vesselId');

export function VesselPage() {
  const { vesselId } = route.useParams();
  const search = route.useSearch();
  const navigate = route.useNavigate();
  const [vessel, items, due, found] = useQueries({
    queries: [
      vesselQuery(vesselId),
      itemsQuery(vesselId),
      vesselDueQuery(vesselId, search.asAt),
      vesselFindingsQuery(vesselId),
    ],
  });
  const failed = [vessel, items, due, found].find((each) => each.isError);
  if (failed && isStatus(failed.error, 404)) return <NotHere />;
  if (failed) {
    const again = () => void Promise.all([vessel, items, due, found].map((each) => each.refetch()));
    return <Failed what={strings.failed} why={whyItFailed(failed.error)} again={again} />;
  }
  if (!vessel.data || !items.data || !due.data || !found.data) return <Waiting>{strings.waiting}</Waiting>;
  const onOpen = (open: string | undefined) =>
    void navigate({ search: (now: VesselSearch) => ({ ...now, open }), replace: true, resetScroll: false });
  return (
    <>
      <VesselHeader vessel={vessel.data} rows={due.data} findings={found.data} search={search} />
      <Identifiers vessel={vessel.data} />
      <Body
        vesselId={vesselId}
        items={items.data}
        rows={due.data}
        findings={found.data}
        search={search}
        onOpen={onOpen}
        hasRig={vessel.data.rig !== undefined}
      />
      <ChangesLink vesselId={vesselId} />
    </>
  );
}

type BodyProps = {
  vesselId: string;
  items: Item[];
  rows: DueRow[];
  findings: Finding[];
  search: VesselSearch;
  onOpen: (open: string | undefined) => void;
  hasRig: boolean;
};

function Body({ items, hasRig, ...props }: BodyProps) {
  if (items.length === 0 && props.findings.length === 0) {
    return (
      <div className="empty">
        <p className="voice">{strings.nothingAboard}</p>
        <p className="quiet">{strings.nothingAboardHow}</p>
      </div>
    );
  }
  return (
    <>
      <BeforeUse {...props} />
      <Places items={items} hasRig={hasRig} {...props} />
    </>
  );
}
