import type { RefCallback } from 'react';
import { strings } from '../strings/fleet.ts';
import { type MonthBlock, monthBlocks, type Scale, type SeasonBand } from './horizon-scale.ts';
import { percent } from './percent.ts';

const monthName = new Intl.DateTimeFormat('en-GB', { month: 'short', timeZone: 'UTC' });

type Props = { scale: Scale; seasons: readonly SeasonBand[]; measure: RefCallback<HTMLDivElement> };

/** Years, seasons, months and the scale bar. Decoration for the eye: each mark says its own date in words. */
export function HorizonAxis({ scale, seasons, measure }: Props) {
  const blocks = monthBlocks(scale);
  return (
    <div className="horizon-line horizon-head" aria-hidden="true">
      <span className="horizon-count">{strings.outOfDate}</span>
      <span className="horizon-small horizon-law">{strings.ofThemByLaw}</span>
      <span className="horizon-small horizon-due">{strings.dueSoonInShort}</span>
      <span className="horizon-small horizon-unknown">{strings.noDate}</span>
      <span className="horizon-small horizon-findings">{strings.findings}</span>
      <div className="horizon-axis" ref={measure}>
        {seasons.map(({ year, left, width }) => (
          <span key={year} className="axis-season" style={{ left: percent(left, scale.width) }}>
            {width > 70 && strings.season(year)}
          </span>
        ))}
        {blocks.map((block) => (
          <Block key={block.month} block={block} width={scale.width} />
        ))}
      </div>
    </div>
  );
}

function Block({ block, width }: { block: MonthBlock; width: number }) {
  const place = { left: percent(block.left, width), width: percent(block.width, width) };
  return (
    <>
      <i className={block.dark ? 'scale-block dark' : 'scale-block'} style={place} />
      {block.year && (
        <b className="axis-year" style={{ left: place.left }}>
          {block.year}
        </b>
      )}
      {block.width > 20 && (
        <span className="axis-month" style={place}>
          {monthName.format(new Date(`${block.month}-01`)).replace('Sept', 'Sep')}
        </span>
      )}
    </>
  );
}
