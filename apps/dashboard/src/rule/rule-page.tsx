/** One rule, as somebody in a yard reads it. */

import { isStatus } from '@garboard/client/api-problem.ts';
import { useQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import { whyItFailed } from '../api/why-it-failed.ts';
import { NotHere } from '../frame/not-here.tsx';
import { itemKindsQuery } from '../item/catalogue.query.ts';
import { strings } from '../strings/rule.ts';
import { Failed } from '../ui/failed.tsx';
import { PageHeader } from '../ui/page-header.tsx';
import { Waiting } from '../ui/waiting.tsx';
import { HasEnded, OwnRuleActs, OwnRuleVersions } from './own-rule-versions.tsx';
import { ruleQuery } from './rule.query.ts';
import { RuleCautions } from './rule-cautions.tsx';
import { RuleDuties } from './rule-duties.tsx';
import { RuleSide } from './rule-side.tsx';
import { titleOf } from './rule-words.ts';
import { WorkedExampleSection } from './worked-example-section.tsx';
import '../item/reasoning.css';
import './rule.css';

const route = getRouteApi('/rules/$ruleId');

export function RulePage() {
  const { ruleId } = route.useParams();
  const { data: rule, error, isPending, refetch } = useQuery(ruleQuery(ruleId));
  const kinds = useQuery(itemKindsQuery()).data;
  if (isStatus(error, 404)) return <NotHere />;
  if (isPending || !kinds) return <Waiting>{strings.rule.waiting}</Waiting>;
  if (!rule) return <Failed what={strings.rule.failed} why={whyItFailed(error)} again={refetch} />;
  return (
    <>
      <PageHeader title={titleOf(rule, kinds)} acts={rule.ownRule && <OwnRuleActs rule={rule} />}>
        <p>
          <Link to="/rules">{strings.rule.back}</Link>
        </p>
      </PageHeader>
      <div className="rule">
        <div>
          <p className="voice rule-sentence">{rule.inWords}</p>
          {rule.ownRule && <HasEnded ownRule={rule.ownRule} />}
          <RuleCautions rule={rule} kinds={kinds} />
          <RuleDuties rule={rule} kinds={kinds} />
          {rule.ownRule && <OwnRuleVersions ownRule={rule.ownRule} />}
          <WorkedExampleSection key={rule.id} rule={rule} kinds={kinds} />
        </div>
        <RuleSide rule={rule} kinds={kinds} />
      </div>
    </>
  );
}
