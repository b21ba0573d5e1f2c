/** Which open findings a yard is given to put right. */
import { useInfiniteQuery } from '@tanstack/react-query';
import { findingsQuery } from '../finding/finding.query.ts';
import { strings } from '../strings/share.ts';

type Props = { chosen: readonly string[]; fault: string | undefined; onChange: (ids: readonly string[]) => void };

export function WhichWork({ chosen, fault, onChange }: Props) {
  const { data } = useInfiniteQuery(findingsQuery({ open: 'true' }));
  const open = data?.pages.flatMap(({ items }) => items) ?? [];
  const toggle = (id: string) => onChange(chosen.includes(id) ? chosen.filter((each) => each !== id) : [...chosen, id]);
  return (
    <fieldset className="field which-work" id="share-findingIds" tabIndex={-1}>
      <legend className="field-name">{strings.work}</legend>
      {fault && <p className="field-fault">{fault}</p>}
      {open.length === 0 && <p className="quiet">{strings.workNone}</p>}
      {open.map(({ id, what, vessel }) => (
        <label key={id} className="tick">
          <input type="checkbox" checked={chosen.includes(id)} onChange={() => toggle(id)} />
          <span>
            <span className="vessel-name">{vessel.name}</span>: {what}
          </span>
        </label>
      ))}
    </fieldset>
  );
}
