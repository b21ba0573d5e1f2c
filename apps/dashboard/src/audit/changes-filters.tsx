import { useQuery } from '@tanstack/react-query';
import { useNavigate } from '@tanstack/react-router';
import { apiKeysQuery } from '../api-key/api-key.query.ts';
import { peopleQuery } from '../organisation/people.query.ts';
import { vesselNamesQuery } from '../rule/own-rule.query.ts';
import { strings, subjectWords } from '../strings/audit.ts';
import { WordChoice } from '../ui/word-choice.tsx';
import { type ChangesSearch, readChangesSearch } from './changes-search.ts';

const { filter } = strings;

export function ChangesFilters({ search }: { search: ChangesSearch }) {
  const navigate = useNavigate({ from: '/changes' });
  const go = (next: ChangesSearch) => void navigate({ search: next, replace: true, resetScroll: false });
  const choose = (key: keyof ChangesSearch, value: string | undefined) =>
    go(readChangesSearch({ ...search, [key]: value }));
  const lists = useChoices();
  return (
    <search className="filters" aria-label={strings.filters}>
      {lists.map(({ key, choices }) => (
        <WordChoice
          key={key}
          name={key === 'who' ? filter.actor : filter[key]}
          any={filter.any}
          value={search[key]}
          choices={choices}
          onChoose={(value) => choose(key, value)}
        />
      ))}
      {(['from', 'to'] as const).map((key) => (
        <label key={key} className="day-filter">
          <span className="quiet">{strings[key]}</span>{' '}
          <input type="date" value={search[key] ?? ''} onChange={(event) => choose(key, event.currentTarget.value)} />
        </label>
      ))}
      {Object.keys(search).length > 0 && (
        <button type="button" className="word" onClick={() => go({})}>
          {strings.takeAway}
        </button>
      )}
    </search>
  );
}

function useChoices() {
  const people = useQuery(peopleQuery()).data ?? [];
  const keys = useQuery(apiKeysQuery()).data ?? [];
  const vessels = useQuery(vesselNamesQuery()).data ?? [];
  const who = [
    ...people.map(({ id, name = strings.former }) => ({ value: `person:${id}`, words: name })),
    ...keys.map(({ id, name }) => ({ value: `api_key:${id}`, words: strings.program(name) })),
  ];
  return [
    { key: 'subject', choices: Object.entries(subjectWords).map(([value, words]) => ({ value, words })) },
    { key: 'who', choices: who },
    { key: 'vessel', choices: vessels.map(({ id, name }) => ({ value: id, words: name })) },
  ] as const;
}
