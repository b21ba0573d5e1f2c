import { isOpen, reasoningKey } from '../item/reasoning-key.ts';
import { strings } from '../strings/due-list.ts';
import { ChooseAll } from './choose-box.tsx';
import { useChoosing } from './choosing.ts';
import { isOfRule, type DueLine as Line } from './due.query.ts';
import { DueLine } from './due-line.tsx';
import { MatterLine } from './matter-line.tsx';

const { columns } = strings;

export function DueTable(props: {
  rows: readonly Line[];
  asAt: string | undefined;
  open: string | undefined;
  onOpen: (key: string | undefined) => void;
}) {
  const choosing = useChoosing() !== null;
  const ofRules = props.rows.filter(isOfRule);
  return (
    <table className="due-table">
      <caption className="out-of-sight">{strings.caption}</caption>
      <thead>
        <tr>
          <ChooseAll rows={ofRules} />
          <th scope="col">{columns.standing}</th>
          <th scope="col" className="number">
            {columns.by}
          </th>
          <th scope="col">{columns.thing}</th>
          <th scope="col">{columns.vessel}</th>
          <th scope="col">{columns.due}</th>
          <th scope="col">{columns.do}</th>
          <th scope="col">{columns.source}</th>
        </tr>
      </thead>
      <tbody>
        {props.rows.map((row) => {
          if (!isOfRule(row)) return <MatterLine key={row.id} matter={row} asAt={props.asAt} choosing={choosing} />;
          const key = reasoningKey(row.item.id, row.ruleId, row.duty);
          const open = isOpen(props.open, key);
          return (
            <DueLine
              key={key}
              row={row}
              rows={ofRules}
              asAt={props.asAt}
              open={open}
              onTurn={() => props.onOpen(open ? undefined : key)}
            />
          );
        })}
      </tbody>
    </table>
  );
}
