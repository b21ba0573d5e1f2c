/** The whole fleet, or only these vessels of it. */
import { useQuery } from '@tanstack/react-query';
import { vesselNamesQuery } from '../rule/own-rule.query.ts';
import { VesselTicks } from './vessel-ticks.tsx';

type Props = {
  id: string;
  words: { readonly legend: string; readonly all: string; readonly only: string };
  /** `null`: the whole fleet. */
  chosen: readonly string[] | null;
  fault: string | undefined;
  onChange: (chosen: readonly string[] | null) => void;
};

export function WhichVessels({ id, words, chosen, fault, onChange }: Props) {
  const { data: vessels = [] } = useQuery(vesselNamesQuery());
  return (
    <fieldset className="plain" id={id} tabIndex={-1} aria-describedby={`${id}-fault`}>
      <legend className="field-name">{words.legend}</legend>
      <label className="tick">
        <input type="radio" name={`${id}-which`} checked={chosen === null} onChange={() => onChange(null)} />
        {words.all}
      </label>
      <label className="tick">
        <input type="radio" name={`${id}-which`} checked={chosen !== null} onChange={() => onChange([])} />
        {words.only}
      </label>
      {chosen && <VesselTicks chosen={chosen} vessels={vessels} onChange={onChange} />}
      <p id={`${id}-fault`} className={fault ? 'field-fault' : undefined}>
        {fault}
      </p>
    </fieldset>
  );
}
