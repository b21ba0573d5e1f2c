/** A vessel's line: the season and her time ashore behind, her marks in front, words for the mark that is pointed at. */
import { useState } from 'react';
import type { FleetRow } from './fleet.query.ts';
import { HorizonMark } from './horizon-mark.tsx';
import { layOut } from './horizon-marks.ts';
import { monthBlocks, type Scale, type SeasonBand, spanOnAxis } from './horizon-scale.ts';
import { MarkWords } from './mark-words.tsx';
import { percent } from './percent.ts';

type Props = { row: FleetRow; scale: Scale; seasons: readonly SeasonBand[]; asAt: string | undefined };

export function HorizonStrip({ row, scale, seasons, asAt }: Props) {
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
      {seasons.map((band) => (
        <i key={band.year} className="season" style={place(band, scale)} />
      ))}
      <Spans row={row} scale={scale} />
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

/** Laid up is a hatch, ashore a line under it, a haul-out a bracket on its day. An end nobody has recorded fades. */
function Spans({ row, scale }: Pick<Props, 'row' | 'scale'>) {
  const drawn = (name: string) => (span: FleetRow['laidUp'][number]) => {
    const on = spanOnAxis(scale, span.from, span.to);
    const open = span.to === null ? ' open-ended' : '';
    return on && <i key={name + span.from} className={`${name}${open}`} style={place(on, scale)} />;
  };
  return (
    <>
      {row.laidUp.map(drawn('laid-up'))}
      {row.ashore.map(drawn('ashore'))}
      {row.haulOuts
        .filter(({ on }) => on >= scale.from && on < scale.to)
        .map(({ on }) => (
          <i key={on} className="haul-out" style={{ left: percent(scale.x(on), scale.width) }} />
        ))}
    </>
  );
}

const place = (span: { left: number; width: number }, scale: Scale) => ({
  left: percent(span.left, scale.width),
  width: percent(span.width, scale.width),
});
