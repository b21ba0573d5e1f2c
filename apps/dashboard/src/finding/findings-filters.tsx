/** Filters that read as words. */
import { useQuery } from '@tanstack/react-query';
import { fleetQuery } from '../fleet/fleet.query.ts';
import { strings } from '../strings/finding.ts';
import { hazardWords, stateWords, tradeWords, urgencyWords } from '../strings/finding-codes.ts';
import { type Choice, WordChoice } from '../ui/word-choice.tsx';
import { type FindingsSearch, isFiltered, readFindingsSearch } from './findings-search.ts';

const { filter, show, orders, groups, takeAway, filters } = strings.list;

type Props = { search: FindingsSearch; onChange: (next: Partial<FindingsSearch>) => void };

export function FindingsFilters({ search, onChange }: Props) {
  const vessels = useQuery(fleetQuery(undefined)).data?.items ?? [];
  const lists: { key: 'urgency' | 'hazard' | 'trade' | 'state' | 'vessel'; choices: Choice[] }[] = [
    { key: 'urgency', choices: words(urgencyWords) },
    { key: 'hazard', choices: words(hazardWords) },
    { key: 'trade', choices: words(tradeWords) },
    { key: 'state', choices: words(stateWords) },
    { key: 'vessel', choices: vessels.map(({ vesselId, name }) => ({ value: vesselId, words: name })) },
  ];
  const choose = (key: string, value: string | undefined) =>
    onChange({ [key]: undefined, ...readFindingsSearch(value === undefined ? {} : { [key]: value }) });
  return (
    <search className="filters" aria-label={filters}>
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
        name={filter.show}
        any={show.open}
        value={search.show}
        choices={[
          { value: 'week', words: show.week },
          { value: 'ended', words: show.ended },
        ]}
        onChoose={(value) => choose('show', value)}
      />
      <WordChoice
        name={filter.order}
        any={orders.urgency}
        value={search.order}
        choices={[{ value: 'age', words: orders.age }]}
        onChoose={(value) => choose('order', value)}
      />
      <WordChoice
        name={filter.group}
        any={search.show === 'week' ? groups.trade : groups.urgency}
        value={search.group}
        choices={words(groups).filter(({ value }) => value !== (search.show === 'week' ? 'trade' : 'urgency'))}
        onChoose={(value) => choose('group', value)}
      />
      {isFiltered(search) && (
        <button type="button" className="word" onClick={() => onChange(NOTHING_CHOSEN)}>
          {takeAway}
        </button>
      )}
    </search>
  );
}

const NOTHING_CHOSEN = { urgency: undefined, hazard: undefined, trade: undefined, state: undefined, vessel: undefined };
const words = (codes: Record<string, string>): Choice[] =>
  Object.entries(codes).map(([value, each]) => ({ value, words: each }));
