import { strings } from '../strings/fleet.ts';
import { ZOOMS, type Zoom } from './horizon-scale.ts';

/** How far the horizon reaches; kept in the address. */
export function HorizonZoom({ months, onZoom }: { months: Zoom; onZoom: (months: Zoom) => void }) {
  return (
    <fieldset className="horizon-zoom">
      <legend className="quiet">{strings.zoom}</legend>
      {ZOOMS.map((each) => (
        <label key={each}>
          <input type="radio" name="zoom" checked={each === months} onChange={() => onZoom(each)} />
          <span>{strings.zoomTo(each)}</span>
        </label>
      ))}
    </fieldset>
  );
}
