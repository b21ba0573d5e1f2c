/** One vessel's line: who, what is out of date, and her marks. */
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { countAll } from '../due-list/counts.ts';
import { strings } from '../strings/fleet.ts';
import { ageInShort } from '../ui/age.ts';
import { daysBetween } from '../ui/calendar.ts';
import { lengthInMetres } from '../vessel/particulars.ts';
import type { FleetRow } from './fleet.query.ts';
import { HorizonMark } from './horizon-mark.tsx';
import { layOut } from './horizon-marks.ts';
import { monthBlocks, type Scale, spanOnAxis } from './horizon-scale.ts';
import { MarkWords } from './mark-words.tsx';
import { percent } from './percent.ts';

type Props = { row: FleetRow; scale: Scale; asAt: string | undefined };

export function HorizonRow({ row, scale, asAt }: Props) {
  return (
    <li className="horizon-line">
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
      <Strip row={row} scale={scale} asAt={asAt} />
    </li>
  );
}

function Counts({ row, asOf }: { row: FleetRow; asOf: string }) {
  const overdue = countAll(row.counts.overdue);
  const unknown = countAll(row.counts.unknown);
  const days = row.oldestOverdueAfter ? daysBetween(row.oldestOverdueAfter, asOf) : null;
  return (
    <>
      <span className="horizon-count">
        <span className="out-of-sight">{strings.standingOf(row.counts, days)}</span>
        <span aria-hidden="true" className={`standing ${overdue > 0 ? 'overdue' : unknown > 0 ? 'none' : 'in_date'}`}>
          {overdue > 0 && overdue}
        </span>
        {days !== null && <span aria-hidden="true">{ageInShort(days)}</span>}
      </span>
      <span className="horizon-unknown">
        {unknown > 0 && (
          <>
            <span className="out-of-sight">{strings.unknownOf(unknown)}</span>
            <span aria-hidden="true" className="standing unknown">
              {unknown}
            </span>
          </>
        )}
      </span>
    </>
  );
}

function Strip({ row, scale, asAt }: Props) {
  const [told, setTold] = useState<number | null>(null);
  const targets = layOut(row.marks, scale);
  const inWords = told === null ? undefined : targets[told];
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: only puts away what hovering brought up
    <div
      className="horizon-strip"
      onPointerLeave={() => setTold(null)}
      onKeyDown={(event) => event.key === 'Escape' && setTold(null)}
    >
      {row.laidUp.map(({ from, to }) => {
        const span = spanOnAxis(scale, from, to);
        return (
          span && <i key={from} className={to === null ? 'laid-up open-ended' : 'laid-up'} style={place(span, scale)} />
        );
      })}
      {monthBlocks(scale).map(
        (block) =>
          block.year && <i key={block.year} className="year-line" style={{ left: percent(block.left, scale.width) }} />,
      )}
      {targets.map((target, index) => (
        <HorizonMark
          key={target.left}
          target={target}
          row={row}
          scale={scale}
          asAt={asAt}
          onTell={() => setTold(index)}
          onLeave={() => setTold(null)}
        />
      ))}
      {inWords && <MarkWords target={inWords} width={scale.width} />}
    </div>
  );
}

const place = (span: { left: number; width: number }, scale: Scale) => ({
  left: percent(span.left, scale.width),
  width: percent(span.width, scale.width),
});
