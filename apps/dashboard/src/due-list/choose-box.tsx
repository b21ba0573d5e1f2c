import { strings } from '../strings/bulk.ts';
import { canBeChosen, keyOfRow, useChoosing } from './choosing.ts';
import type { DueRow } from './due.query.ts';

/** On paper each is a box to tick off. */
export function ChooseBox({ row, rows }: { row: DueRow; rows: readonly DueRow[] }) {
  const choosing = useChoosing();
  return (
    <td className="cell-choose">
      {choosing && canBeChosen(row) && (
        <input
          type="checkbox"
          aria-label={strings.choose(row.item.label, row.vessel.name, row.action.words)}
          checked={choosing.chosen.has(keyOfRow(row))}
          onChange={(event) =>
            choosing.turn(row, rows, event.nativeEvent instanceof MouseEvent && event.nativeEvent.shiftKey)
          }
          onKeyDown={(event) => {
            if (event.key !== ' ' || !event.shiftKey) return;
            event.preventDefault();
            choosing.turn(row, rows, true);
          }}
        />
      )}
    </td>
  );
}

export function ChooseAll({ rows }: { rows: readonly DueRow[] }) {
  const choosing = useChoosing();
  const able = rows.filter(canBeChosen);
  const all = able.length > 0 && able.every((row) => choosing?.chosen.has(keyOfRow(row)));
  return (
    <td className="cell-choose">
      {choosing && (
        <input
          type="checkbox"
          aria-label={strings.chooseAll}
          checked={all}
          onChange={() => choosing.turnAll(rows, !all)}
        />
      )}
    </td>
  );
}
