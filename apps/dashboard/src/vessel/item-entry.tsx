import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { useEffect, useRef, useState } from 'react';
import type { DueRow } from '../due-list/due.query.ts';
import { FactList } from '../item/fact-list.tsx';
import { factsQuery, type Item } from '../item/item.query.ts';
import { KindCaution } from '../item/kind-caution.tsx';
import { isOpen, reasoningKey } from '../item/reasoning-key.ts';
import { useMay } from '../organisation/may.ts';
import { strings as itemStrings } from '../strings/item.ts';
import { strings as recordStrings } from '../strings/record.ts';
import { strings } from '../strings/vessel.ts';
import { ObligationLine } from './obligation-line.tsx';
import { isPicked } from './vessel-header.tsx';
import type { VesselSearch } from './vessel-search.ts';

type Props = { item: Item; rows: readonly DueRow[]; search: VesselSearch; onOpen: (open: string | undefined) => void };

/** A thing aboard and what is asked of it. */
export function ItemEntry({ item, rows, search, onOpen }: Props) {
  const may = useMay();
  const entry = useRef<HTMLElement>(null);
  const isAsked = search.thing === item.id;
  useEffect(() => {
    if (isAsked) entry.current?.scrollIntoView({ block: 'center' });
  }, [isAsked]);
  return (
    <article ref={entry} className={isAsked ? 'item-entry asked' : 'item-entry'} aria-label={item.label}>
      <p className="item-name">
        <strong>{item.quantity > 1 ? `${item.label} ×${item.quantity}` : item.label}</strong>{' '}
        <span className="quiet">{[item.maker, item.model, item.serialNumber].filter(Boolean).join(' ')}</span>
        {item.withdrawn && <span className="standing withdrawn">{strings.withdrawn}</span>}
        {may.keepRegister && (
          <Link
            to="/items/$itemId/change"
            params={{ itemId: item.id }}
            className="item-record"
            aria-label={`${recordStrings.change.link}: ${item.label}`}
          >
            {recordStrings.change.link}
          </Link>
        )}
        {may.recordFacts && (
          <Link
            to="/vessels/$vesselId/record"
            params={{ vesselId: item.vesselId }}
            search={{ item: item.id }}
            className="item-record"
            aria-label={`${itemStrings.recordFact}: ${item.label}`}
          >
            {itemStrings.recordFact}
          </Link>
        )}
      </p>
      {rows.length === 0 && !item.withdrawn && <p className="quiet">{strings.noRule}</p>}
      {rows.length === 0 && <Facts item={item} />}
      <ul>
        {rows.map((row) => {
          // What is overdue stands above as well; here it opens under its own name.
          const key = reasoningKey(row.item.id, row.ruleId, row.duty) + (row.standing === 'overdue' ? '~here' : '');
          const open = isOpen(search.open, key) && (row.standing !== 'overdue' || search.open === key);
          return (
            <ObligationLine
              key={key}
              row={row}
              of=""
              asAt={search.asAt}
              open={open}
              picked={isPicked(row, search)}
              onTurn={() => onOpen(open ? undefined : key)}
            />
          );
        })}
      </ul>
    </article>
  );
}

/** Facts of a thing that no reasoning shows. */
function Facts({ item }: { item: Item }) {
  const [open, setOpen] = useState(false);
  return (
    <>
      <button type="button" className="word" aria-expanded={open} onClick={() => setOpen(!open)}>
        {strings.itsFacts}
      </button>
      {open && <OpenFacts item={item} />}
    </>
  );
}

function OpenFacts({ item }: { item: Item }) {
  const { data } = useQuery(factsQuery(item.id));
  return (
    <>
      {data && <FactList facts={data} itemId={item.id} vesselId={item.vesselId} />}
      <KindCaution kind={item.kind} />
    </>
  );
}
