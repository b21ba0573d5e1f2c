import type { components } from '@garboard/client/generated/api.d.ts';
import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import type { DueRow } from '../due-list/due.query.ts';
import type { Finding } from '../finding/finding.query.ts';
import { useMay } from '../organisation/may.ts';
import { strings as changeStrings } from '../strings/change-vessel.ts';
import { schemeWords } from '../strings/codes.ts';
import { strings as evidenceStrings } from '../strings/evidence.ts';
import { strings as findingStrings } from '../strings/finding.ts';
import { strings as itemStrings } from '../strings/item.ts';
import { strings as shareStrings } from '../strings/share.ts';
import { strings as visitStrings } from '../strings/survey-visit.ts';
import { strings } from '../strings/vessel.ts';
import { formatDay, readersToday } from '../ui/calendar.ts';
import { inAList } from '../ui/number-words.ts';
import { PageHeader } from '../ui/page-header.tsx';
import { isUrgent } from './before-use.tsx';
import { particularsInFull, situationOn } from './particulars.ts';
import { situationsQuery } from './vessel.query.ts';
import type { VesselSearch } from './vessel-search.ts';

type Props = {
  vessel: components['schemas']['Vessel'];
  rows: readonly DueRow[];
  findings: readonly Finding[];
  search: VesselSearch;
};

export function VesselHeader({ vessel, rows, findings, search }: Props) {
  const situations = useQuery(situationsQuery(vessel.id)).data ?? [];
  const day = search.asAt ?? readersToday();
  const standing = (asked: DueRow['standing']) => rows.filter((row) => row.standing === asked).length;
  const { before, name, after } = strings.statement(
    vessel.name,
    standing('overdue') + findings.filter(isUrgent).length,
    standing('unknown'),
  );
  const particulars = particularsInFull(vessel, situationOn(situations, day));
  return (
    <PageHeader
      title={`${before}${name}${after}`}
      acts={<Acts vesselId={vessel.id} busy={search.open !== undefined} />}
    >
      <p>
        {particulars}
        {particulars && '. '}
        {vessel.schemes.length > 0 &&
          `${strings.schemes} ${inAList(vessel.schemes.map((scheme) => schemeWords[scheme]))}. `}
        {search.asAt && <span className="as-at">{strings.asAt(formatDay(search.asAt))}</span>}
      </p>
      <Picked rows={rows} search={search} />
    </PageHeader>
  );
}

/** One filled button a page: an open reasoning brings its own. */
function Acts({ vesselId, busy }: { vesselId: string; busy: boolean }) {
  const may = useMay();
  return (
    <>
      <Link to="/vessels/$vesselId/photographs" params={{ vesselId }} className="button">
        {evidenceStrings.vessel.link}
      </Link>
      {may.share && (
        <Link to="/shares" search={{ vessel: vesselId }} className="button">
          {shareStrings.showHer}
        </Link>
      )}
      {may.keepRegister && (
        <Link to="/vessels/$vesselId/change" params={{ vesselId }} className="button">
          {changeStrings.link}
        </Link>
      )}
      {may.keepRegister && (
        <Link to="/vessels/$vesselId/add" params={{ vesselId }} className="button">
          {strings.addThing}
        </Link>
      )}
      {may.survey && (
        <Link to="/vessels/$vesselId/visit" params={{ vesselId }} className="button">
          {visitStrings.start.link}
        </Link>
      )}
      {may.answerFindings && (
        <Link to="/vessels/$vesselId/finding" params={{ vesselId }} className="button">
          {findingStrings.fresh.link}
        </Link>
      )}
      {may.recordFacts && (
        <Link to="/vessels/$vesselId/record" params={{ vesselId }} className={busy ? 'button' : 'button first'}>
          {itemStrings.recordFact}
        </Link>
      )}
    </>
  );
}

function Picked({ rows, search }: { rows: readonly DueRow[]; search: VesselSearch }) {
  const { from, to } = search;
  if (!from || !to) return null;
  const count = rows.filter((row) => isPicked(row, search)).length;
  return <p>{strings.picked(count, formatDay(from), formatDay(to))}</p>;
}

export function isPicked({ overdueAfter }: DueRow, { from, to }: VesselSearch): boolean {
  return (
    overdueAfter !== undefined && from !== undefined && to !== undefined && overdueAfter >= from && overdueAfter <= to
  );
}
