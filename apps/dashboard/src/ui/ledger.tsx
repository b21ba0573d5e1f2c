/** A table of few columns whose lines have something to do at their end; on a phone each line is a block. */
import type { ReactNode } from 'react';

type Props = { caption: string; columns: readonly string[]; className?: string; doing?: boolean; children: ReactNode };

/** `doing`: a last column without a name, for what can be done. */
export function Ledger({ caption, columns, className, doing, children }: Props) {
  return (
    <div className="scrolls">
      <table className={className ? `ledger ${className}` : 'ledger'}>
        <caption className="out-of-sight">{caption}</caption>
        <thead>
          <tr>
            {columns.map((column) => (
              <th key={column} scope="col">
                {column}
              </th>
            ))}
            {doing && <td />}
          </tr>
        </thead>
        <tbody>{children}</tbody>
      </table>
    </div>
  );
}
