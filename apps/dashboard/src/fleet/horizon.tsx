/** The fleet's horizon: what falls due for each vessel, on the chart's scale bar, with what is overdue gathered at the left. */
import { useElementSize } from '@mantine/hooks';
import { useRouter } from '@tanstack/react-router';
import { type MouseEvent, useMemo } from 'react';
import { strings } from '../strings/fleet.ts';
import type { Fleet, FleetRow } from './fleet.query.ts';
import { HorizonAxis } from './horizon-axis.tsx';
import { HorizonCrowding } from './horizon-crowding.tsx';
import { HorizonLegend } from './horizon-legend.tsx';
import { HorizonRow } from './horizon-row.tsx';
import { horizonScale, monthsThatFit, seasonBands, type Zoom } from './horizon-scale.ts';
import { HorizonZoom } from './horizon-zoom.tsx';
import { useMarkKeys } from './use-mark-keys.ts';
import './horizon.css';
import './horizon-marks.css';

type Props = {
  rows: readonly FleetRow[];
  season: Fleet['season'];
  asOf: string;
  asAt: string | undefined;
  months: Zoom | undefined;
  onZoom: (months: Zoom) => void;
};

export function Horizon({ rows, season, asOf, asAt, ...zoom }: Props) {
  const axis = useElementSize();
  const keys = useMarkKeys();
  const goTo = useGoTo();
  const months = zoom.months ?? monthsThatFit(axis.width);
  const scale = useMemo(() => horizonScale(asOf, months, axis.width), [asOf, months, axis.width]);
  const seasons = useMemo(() => seasonBands(scale, season), [scale, season]);
  return (
    <div className="horizon">
      <HorizonZoom months={months} onZoom={zoom.onZoom} />
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset is for a form */}
      <div
        role="group"
        aria-label={strings.chart}
        ref={keys.ref}
        onKeyDown={keys.onKeyDown}
        onFocus={keys.onFocus}
        onClick={goTo}
      >
        <HorizonAxis scale={scale} seasons={seasons} measure={axis.ref} />
        {axis.width > 0 && (
          <ol>
            {rows.map((row) => (
              <HorizonRow key={row.vesselId} row={row} scale={scale} seasons={seasons} asAt={asAt} />
            ))}
          </ol>
        )}
      </div>
      {axis.width > 0 && <HorizonCrowding rows={rows} scale={scale} />}
      <HorizonLegend hasSeason={season !== null} />
    </div>
  );
}

/** The marks are plain links: thousands of the router's own would each listen to every change of address. */
function useGoTo() {
  const router = useRouter();
  return (event: MouseEvent) => {
    const mark = event.target instanceof Element && event.target.closest('a.horizon-target');
    const isPlain = event.button === 0 && !(event.metaKey || event.ctrlKey || event.shiftKey || event.altKey);
    if (!mark || !isPlain) return;
    event.preventDefault();
    router.history.push(mark.getAttribute('href') ?? '/');
  };
}
