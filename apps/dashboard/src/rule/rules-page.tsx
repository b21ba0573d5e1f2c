/** Every rule that a date can come from, by scheme, in words. */
import { useQueries } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import { whyItFailed } from '../api/why-it-failed.ts';
import { rulesQuery } from '../item/catalogue.query.ts';
import { useMay } from '../organisation/may.ts';
import { strings as ownStrings } from '../strings/own-rule.ts';
import { strings } from '../strings/rule.ts';
import { Failed } from '../ui/failed.tsx';
import { PageHeader } from '../ui/page-header.tsx';
import { Waiting } from '../ui/waiting.tsx';
import { type Scheme, schemesQuery } from './rule.query.ts';
import { RuleFilters } from './rule-filters.tsx';
import { answersTo } from './rule-search.ts';
import { SchemeSection } from './scheme-section.tsx';
import type { Rule } from './worked-example.ts';
import './rule.css';

const route = getRouteApi('/rules');

export function RulesPage() {
  const search = route.useSearch();
  const [rules, schemes] = useQueries({ queries: [rulesQuery(), schemesQuery()] });
  const found = (rules.data ?? []).filter((rule) => answersTo(search, rule));
  const failed = [rules, schemes].find((each) => each.isError);
  return (
    <>
      <PageHeader title={strings.title} acts={<AddOwn />}>
        {rules.data && <p aria-live="polite">{strings.answer(found.length, rules.data.length)}</p>}
        <p>{strings.first}</p>
      </PageHeader>
      {failed && (
        <Failed
          what={strings.failed}
          why={whyItFailed(failed.error)}
          again={() => void Promise.all([rules.refetch(), schemes.refetch()])}
        />
      )}
      {!failed && !(rules.data && schemes.data) && <Waiting>{strings.waiting}</Waiting>}
      {rules.data && schemes.data && (
        <>
          <RuleFilters search={search} rules={rules.data} />
          <Schemes schemes={schemes.data} rules={found} />
        </>
      )}
    </>
  );
}

function AddOwn() {
  return useMay().keepRules ? (
    <Link to="/rules/new" className="button">
      {ownStrings.add}
    </Link>
  ) : null;
}

function Schemes({ schemes, rules }: { schemes: readonly Scheme[]; rules: readonly Rule[] }) {
  if (rules.length === 0) {
    return (
      <div className="empty">
        <p className="voice">{strings.nothingMatches}</p>
        <p className="quiet">{strings.nothingMatchesHow}</p>
      </div>
    );
  }
  return schemes.map((scheme) => (
    <SchemeSection key={scheme.id} scheme={scheme} rules={rules.filter((rule) => rule.scheme === scheme.id)} />
  ));
}
