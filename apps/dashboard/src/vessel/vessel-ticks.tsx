import type { VesselName } from '../rule/own-rule.query.ts';

type Props = {
  chosen: readonly string[];
  vessels: readonly VesselName[];
  onChange: (chosen: readonly string[]) => void;
};

export function VesselTicks({ chosen, vessels, onChange }: Props) {
  const turn = (id: string) => onChange(chosen.includes(id) ? chosen.filter((each) => each !== id) : [...chosen, id]);
  return (
    <div className="ticks">
      {vessels.map(({ id, name }) => (
        <label key={id} className="tick">
          <input type="checkbox" checked={chosen.includes(id)} onChange={() => turn(id)} />
          {name}
        </label>
      ))}
    </div>
  );
}
