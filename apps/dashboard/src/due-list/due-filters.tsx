/** Filters that read as words: "standing any · vessel Kittiwake · until 12 months". */
import { useQuery } from '@tanstack/react-query';
import { fleetQuery } from '../fleet/fleet.query.ts';
import { itemKindsQuery } from '../item/catalogue.query.ts';
import { schemeWords, standingWords, weightWords } from '../strings/codes.ts';
import { dueSourceWords, strings } from '../strings/due-list.ts';
import { sentenceCase } from '../ui/number-words.ts';
import { type Choice, WordChoice } from '../ui/word-choice.tsx';
import { DEFAULT_UNTIL, type DueSearch, isFiltered, readDueSearch } from './due-search.ts';

const { filter } = strings;

export function DueFilters({ search, onChange }: { search: DueSearch; onChange: (next: Partial<DueSearch>) => void }) {
  const vessels = useQuery(fleetQuery(search.asAt)).data?.items ?? [];
  const kinds = useQuery(itemKindsQuery()).data ?? [];
  const lists: { key: 'standing' | 'vessel' | 'source' | 'kind' | 'scheme' | 'weight'; choices: Choice[] }[] = [
    { key: 'standing', choices: words(standingWords, (each) => each.toLowerCase()) },
    { key: 'vessel', choices: vessels.map(({ vesselId, name }) => ({ value: vesselId, words: name })) },
    { key: 'source', choices: words(dueSourceWords) },
    { key: 'kind', choices: kinds.map(({ id, name }) => ({ value: id, words: name })) },
    { key: 'scheme', choices: words(schemeWords, sentenceCase) },
    { key: 'weight', choices: words(weightWords) },
  ];
  // What comes from a list of codes is read the way the address is read.
  const choose = (key: string, value: string | undefined) =>
    onChange({ [key]: undefined, open: undefined, ...readDueSearch(value === undefined ? {} : { [key]: value }) });
  return (
    <search className="filters" aria-label={strings.filters}>
      {lists.map(({ key, choices }) => (
        <WordChoice
          key={key}
          name={filter[key]}
          any={filter.any}
          value={search[key]}
          choices={choices}
          onChoose={(value) => choose(key, value)}
        />
      ))}
      <WordChoice
        name={filter.until}
        any={strings.until.any}
        value={search.until === 'any' ? undefined : (search.until ?? DEFAULT_UNTIL)}
        choices={words(strings.until).filter(({ value }) => value !== 'any')}
        onChoose={(value) => choose('until', value ?? 'any')}
      />
      {isFiltered(search) && (
        <button type="button" className="word" onClick={() => onChange(NOTHING_CHOSEN)}>
          {strings.takeAway}
        </button>
      )}
    </search>
  );
}

const NOTHING_CHOSEN = {
  standing: undefined,
  vessel: undefined,
  source: undefined,
  kind: undefined,
  scheme: undefined,
  weight: undefined,
};

function words(codes: Record<string, string>, said: (words: string) => string = (each) => each): Choice[] {
  return Object.entries(codes).map(([value, each]) => ({ value, words: said(each) }));
}
