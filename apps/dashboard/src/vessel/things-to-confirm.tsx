/** A template's things, one line each: ticked is aboard. What is unticked keeps what was typed. */
import { strings } from '../strings/new-vessel.ts';
import { TextField } from '../ui/fields.tsx';
import { thingId } from './entry-faults.ts';
import type { ThingBox, ThingDraft, ThingFaults } from './thing-draft.ts';

type Change = (row: number, change: Partial<ThingDraft>) => void;

export function ThingsToConfirm(props: {
  things: readonly ThingDraft[];
  faults: ThingFaults;
  nameOfKind: (kind: string) => string;
  onChange: Change;
}) {
  const { things, faults, nameOfKind, onChange } = props;
  const ticked = things.filter(({ aboard }) => aboard).length;
  const { columns } = strings;
  return (
    <div className="things">
      <p className="field-help">{strings.confirm}</p>
      <p className="quiet" aria-live="polite">
        {strings.chosen(ticked, things.length)}
      </p>
      <div className="thing heads" aria-hidden="true">
        <span>{columns.kind}</span>
        <span className="boxes">
          {[columns.label, columns.zone, columns.quantity].map((head) => (
            <span key={head}>{head}</span>
          ))}
        </span>
      </div>
      <ul>
        {things.map((thing, row) => (
          // The rows of a template neither come nor go nor change places.
          // biome-ignore lint/suspicious/noArrayIndexKey: the row is what a thing is known by here
          <li key={row}>
            <Thing
              thing={thing}
              row={row}
              kind={nameOfKind(thing.kind)}
              faults={faults[row] ?? {}}
              onChange={onChange}
            />
          </li>
        ))}
      </ul>
    </div>
  );
}

function Thing(props: {
  thing: ThingDraft;
  row: number;
  kind: string;
  faults: Partial<Record<ThingBox, string>>;
  onChange: Change;
}) {
  const { thing, row, kind, faults, onChange } = props;
  const field = (box: ThingBox) => ({
    id: thingId(row, box),
    name: strings.columns[box],
    value: thing[box],
    fault: faults[box],
    onChange: (value: string) => onChange(row, { [box]: value }),
  });
  return (
    <div className="thing">
      <label className="tick">
        <input type="checkbox" checked={thing.aboard} onChange={() => onChange(row, { aboard: !thing.aboard })} />
        <span>
          {kind}
          <span className="out-of-sight">: {thing.label}</span>
        </span>
      </label>
      <fieldset className="plain" disabled={!thing.aboard} aria-label={thing.label}>
        <TextField {...field('label')} />
        <TextField {...field('zone')} />
        <TextField {...field('quantity')} inputMode="numeric" />
      </fieldset>
    </div>
  );
}
