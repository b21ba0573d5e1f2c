/** One vessel's line: who, what is out of date, and her marks. */
import { Link } from '@tanstack/react-router';
import { memo } from 'react';
import { countAll, countBinding } from '../due-list/counts.ts';
import { strings } from '../strings/fleet.ts';
import { ageInShort } from '../ui/age.ts';
import { daysBetween } from '../ui/calendar.ts';
import { lengthInMetres } from '../vessel/particulars.ts';
import { type FleetRow, openFindings } from './fleet.query.ts';
import type { Scale, SeasonBand } from './horizon-scale.ts';
import { HorizonStrip } from './horizon-strip.tsx';
import { useNear } from './use-near.ts';

type Props = { row: FleetRow; scale: Scale; seasons: readonly SeasonBand[]; asAt: string | undefined };

export const HorizonRow = memo(function HorizonRow({ row, scale, seasons, asAt }: Props) {
  const { ref, near } = useNear<HTMLLIElement>();
  return (
    <li className="horizon-line" ref={ref}>
      <Link
        to="/vessels/$vesselId"
        params={{ vesselId: row.vesselId }}
        search={{ asAt }}
        className="horizon-name vessel-name"
        title={row.name}
      >
        {row.name}
      </Link>
      <span className="horizon-about">{lengthInMetres(row.lengthOverallM)}</span>
      <Counts row={row} asOf={scale.from} />
      <Findings row={row} />
      {near ? (
        <HorizonStrip row={row} scale={scale} seasons={seasons} asAt={asAt} />
      ) : (
        <div className="horizon-strip" />
      )}
    </li>
  );
});

/** How many are open; the mark where one of them forbids her use. */
function Findings({ row }: { row: FleetRow }) {
  const [open, urgent] = [openFindings(row), row.findings.before_use];
  return (
    <span className="horizon-small horizon-findings">
      <span className="out-of-sight">{strings.findingsOf(open, urgent)}</span>
      <span aria-hidden="true" className={urgent > 0 ? 'standing overdue' : 'standing none'}>
        {open > 0 && open}
      </span>
    </span>
  );
}

function Counts({ row: { counts, oldestOverdueAfter }, asOf }: { row: FleetRow; asOf: string }) {
  const overdue = countAll(counts.overdue);
  const [law, due, unknown] = [countBinding(counts.overdue), countAll(counts.due), countAll(counts.unknown)];
  const days = oldestOverdueAfter ? daysBetween(oldestOverdueAfter, asOf) : null;
  const standing = overdue > 0 ? 'overdue' : unknown > 0 ? 'none' : 'in_date';
  return (
    <>
      <span className="horizon-count">
        <span className="out-of-sight">{strings.standingOf(counts, days)}</span>
        <span aria-hidden="true" className={`standing ${standing}`}>
          {overdue > 0 && overdue}
        </span>
      </span>
      <span className="horizon-small horizon-law" aria-hidden="true">
        {law > 0 && law}
      </span>
      <span className="horizon-small horizon-age" aria-hidden="true">
        {days !== null && ageInShort(days)}
      </span>
      <Small count={due} standing="due" said={strings.dueOf(due)} />
      <Small count={unknown} standing="unknown" said={strings.unknownOf(unknown)} />
    </>
  );
}

function Small({ count, standing, said }: { count: number; standing: 'due' | 'unknown'; said: string }) {
  return (
    <span className={`horizon-small horizon-${standing}`}>
      {count > 0 && (
        <>
          <span className="out-of-sight">{said}</span>
          <span aria-hidden="true" className={`standing ${standing}`}>
            {count}
          </span>
        </>
      )}
    </span>
  );
}
