import { useQuery } from '@tanstack/react-query';
import { useNavigate } from '@tanstack/react-router';
import { itemKindsQuery } from '../item/catalogue.query.ts';
import { schemeWords, weightWords } from '../strings/codes.ts';
import { strings } from '../strings/rule.ts';
import { sentenceCase } from '../ui/number-words.ts';
import { WordChoice } from '../ui/word-choice.tsx';
import { isNarrowed, type RuleSearch, readRuleSearch } from './rule-search.ts';
import type { Rule } from './worked-example.ts';

const { filter } = strings;

/** Only what some rule has can be chosen. */
export function RuleFilters({ search, rules }: { search: RuleSearch; rules: readonly Rule[] }) {
  const navigate = useNavigate({ from: '/rules' });
  const kinds = useQuery(itemKindsQuery()).data ?? [];
  const go = (next: RuleSearch) => void navigate({ search: next, replace: true, resetScroll: false });
  const lists = [
    { key: 'scheme', choices: choices(schemeWords, (code) => rules.some(({ scheme }) => scheme === code)) },
    {
      key: 'kind',
      choices: kinds
        .filter(({ id }) => rules.some((rule) => rule.kinds.includes(id)))
        .map(({ id, name }) => ({ value: id, words: name })),
    },
    { key: 'weight', choices: choices(weightWords, (code) => rules.some(({ weight }) => weight === code)) },
  ] as const;
  return (
    <search className="filters" aria-label={strings.filters}>
      {lists.map(({ key, choices: all }) => (
        <WordChoice
          key={key}
          name={filter[key]}
          any={filter.any}
          value={search[key]}
          choices={all}
          onChoose={(value) => go(readRuleSearch({ ...search, [key]: value }))}
        />
      ))}
      {isNarrowed(search) && (
        <button type="button" className="word" onClick={() => go({})}>
          {strings.takeAway}
        </button>
      )}
    </search>
  );
}

function choices(words: Record<string, string>, has: (code: string) => boolean) {
  return Object.entries(words)
    .filter(([code]) => has(code))
    .map(([value, said]) => ({ value, words: sentenceCase(said) }));
}
