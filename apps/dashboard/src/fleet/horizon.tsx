/** The fleet's horizon: what falls due for each vessel, on the chart's scale bar, with what is overdue gathered at the left. */
import { useElementSize } from '@mantine/hooks';
import { useState } from 'react';
import { strings } from '../strings/fleet.ts';
import type { FleetRow } from './fleet.query.ts';
import { HorizonAxis } from './horizon-axis.tsx';
import { HorizonCrowding } from './horizon-crowding.tsx';
import { HorizonLegend } from './horizon-legend.tsx';
import { HorizonRow } from './horizon-row.tsx';
import { horizonScale, monthsThatFit } from './horizon-scale.ts';
import { useMarkKeys } from './use-mark-keys.ts';
import './horizon.css';
import './horizon-marks.css';

/** Enough to see who comes first without burying the list below. */
const FIRST = 12;

export function Horizon(props: { rows: readonly FleetRow[]; asOf: string; asAt: string | undefined }) {
  const axis = useElementSize();
  const keys = useMarkKeys();
  const [all, setAll] = useState(false);
  const months = monthsThatFit(axis.width);
  const scale = horizonScale(props.asOf, months, axis.width);
  const rows = all || props.rows.length <= FIRST + 3 ? props.rows : props.rows.slice(0, FIRST);
  return (
    <div className="horizon">
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset is for a form */}
      <div role="group" aria-label={strings.chart} ref={keys.ref} onKeyDown={keys.onKeyDown} onFocus={keys.onFocus}>
        <HorizonAxis scale={scale} measure={axis.ref} />
        {axis.width > 0 && (
          <ol>
            {rows.map((row) => (
              <HorizonRow key={row.vesselId} row={row} scale={scale} asAt={props.asAt} />
            ))}
          </ol>
        )}
      </div>
      {axis.width > 0 && <HorizonCrowding rows={props.rows} scale={scale} />}
      <div className="horizon-foot">
        <HorizonLegend months={months} />
        {props.rows.length > FIRST + 3 && (
          <button type="button" className="word" onClick={() => setAll(!all)}>
            {all ? strings.fewer : strings.all(props.rows.length)}
          </button>
        )}
      </div>
    </div>
  );
}
