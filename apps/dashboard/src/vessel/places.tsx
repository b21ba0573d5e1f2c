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
import { byZone } from './zones.ts';

type Props = {
  items: readonly Item[];
  rows: readonly DueRow[];
  findings: readonly Finding[];
  search: VesselSearch;
  onOpen: (open: string | undefined) => void;
};

export function Places({ items, rows, findings, search, onOpen }: Props) {
  const kinds = useQuery(itemKindsQuery()).data ?? [];
  const zoneOf = (item: Item) => item.zone ?? kinds.find(({ id }) => id === item.kind)?.zone ?? strings.somewhere;
  return (
    <section aria-labelledby="places" className="places">
      <h2 id="places">{strings.places}</h2>
      {byZone([...items, ...findings], (each) => ('kind' in each ? zoneOf(each) : nameOfZone(each.zone))).map(
        ({ zone, things }) => (
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
        ),
      )}
    </section>
  );
}

const isItem = (each: Item | Finding): each is Item => 'kind' in each;
const isFinding = (each: Item | Finding): each is Finding => !isItem(each);
