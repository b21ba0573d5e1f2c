import { useEffect, useRef } from 'react';
import { strings } from '../strings/search.ts';
import type { FoundGroup } from './found.ts';

export const optionId = (index: number) => `found-${index}`;

type Props = {
  groups: readonly FoundGroup[];
  active: number;
  onPoint: (index: number) => void;
  onChoose: (index: number) => void;
};

/** The focus stays in the box above; which row it means is said by `aria-activedescendant`. */
export function FoundList({ groups, active, onPoint, onChoose }: Props) {
  const list = useRef<HTMLDivElement>(null);
  useEffect(() => {
    list.current?.querySelector(`#${optionId(active)}`)?.scrollIntoView({ block: 'nearest' });
  }, [active]);
  let index = -1;
  return (
    <div id="found" role="listbox" aria-label={strings.results} className="found" ref={list}>
      {groups.map(({ name, found }) => (
        // biome-ignore lint/a11y/useSemanticElements: a group of options is no fieldset
        <div key={name} role="group" aria-label={name}>
          <p className="found-group" aria-hidden="true">
            {name}
          </p>
          {found.map((each) => {
            index += 1;
            const mine = index;
            return (
              // biome-ignore lint/a11y/useKeyWithClickEvents: the keys are the box's
              <div
                key={each.key}
                id={optionId(mine)}
                role="option"
                tabIndex={-1}
                aria-selected={mine === active}
                className="found-row"
                onPointerMove={() => onPoint(mine)}
                onClick={() => onChoose(mine)}
              >
                <span>{each.words}</span> <span className="quiet">{each.about}</span>
              </div>
            );
          })}
        </div>
      ))}
    </div>
  );
}
