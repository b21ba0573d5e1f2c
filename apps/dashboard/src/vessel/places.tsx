/** Every thing aboard, by the place it is in, in the order a survey walks. */
import { useQuery } from '@tanstack/react-query';
import type { DueRow } from '../due-list/due.query.ts';
import type { Finding } from '../finding/finding.query.ts';
import { itemKindsQuery } from '../item/catalogue.query.ts';
import type { Item } from '../item/item.query.ts';
import { strings } from '../strings/vessel.ts';
import { nameOfZone } from '../strings/zones.ts';
import { sentenceCase } from '../ui/number-words.ts';
import { FindingEntry } from './finding-entry.tsx';
import { ItemEntry } from './item-entry.tsx';
import type { VesselSearch } from './vessel-search.ts';
import { Where } from './where.tsx';
import { byZone } from './zones.ts';

type Props = {
  items: readonly Item[];
  rows: readonly DueRow[];
  findings: readonly Finding[];
  search: VesselSearch;
  onOpen: (open: string | undefined) => void;
  hasRig: boolean;
};

export function Places({ hasRig, items, rows, findings, search, onOpen }: Props) {
  const kinds = useQuery(itemKindsQuery()).data ?? [];
  const zoneOf = (item: Item) => item.zone ?? kinds.find(({ id }) => id === item.kind)?.zone ?? strings.somewhere;
  const places = byZone([...items, ...findings], (each) => (isItem(each) ? zoneOf(each) : nameOfZone(each.zone)));
  return (
    <div className="with-drawing">
      <section aria-labelledby="places" className="places">
        <h2 id="places">{strings.places}</h2>
        {places.map(({ zone, things }) => (
          <section key={zone} className="place" aria-label={sentenceCase(zone)}>
            <h3>{sentenceCase(zone)}</h3>
            <div>
              <ul className="place-findings">
                {things.filter(isFinding).map((finding) => (
                  <FindingEntry key={finding.id} finding={finding} />
                ))}
              </ul>
              {things.filter(isItem).map((item) => (
                <ItemEntry
                  key={item.id}
                  item={item}
                  rows={rows.filter((row) => row.item.id === item.id)}
                  search={search}
                  onOpen={onOpen}
                />
              ))}
            </div>
          </section>
        ))}
      </section>
      <Where
        hasRig={hasRig}
        places={places.map(({ zone, things }) => {
          const aboard = new Set(things.filter(isItem).map(({ id }) => id));
          return { zone, rows: rows.filter(({ item }) => aboard.has(item.id)), findings: things.filter(isFinding) };
        })}
      />
    </div>
  );
}

const isItem = (each: Item | Finding): each is Item => 'kind' in each;
const isFinding = (each: Item | Finding): each is Finding => !isItem(each);
