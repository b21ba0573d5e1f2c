import { isStatus } from '@garboard/client/api-problem.ts';
import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import type { ReactNode } from 'react';
import { whyItFailed } from '../api/why-it-failed.ts';
import { NotHere } from '../frame/not-here.tsx';
import { useMay } from '../organisation/may.ts';
import { strings } from '../strings/own-rule.ts';
import { strings as ruleStrings } from '../strings/rule.ts';
import { Failed } from '../ui/failed.tsx';
import { PageHeader } from '../ui/page-header.tsx';
import { Waiting } from '../ui/waiting.tsx';
import { ruleQuery } from './rule.query.ts';
import type { Rule } from './worked-example.ts';

type OwnRule = NonNullable<Rule['ownRule']>;

/** The head of a page that changes an own rule, and `children` once it is read. A published rule has no such page. */
export function OwnRuleToChange(props: {
  ruleId: string;
  title: string;
  intro: string;
  children: (rule: Rule, ownRule: OwnRule) => ReactNode;
}) {
  const { ruleId } = props;
  const may = useMay();
  const { data: rule, error, isPending, refetch } = useQuery({ ...ruleQuery(ruleId), staleTime: 0, gcTime: 0 });
  if (isStatus(error, 404) || (rule && !rule.ownRule)) return <NotHere />;
  if (isPending) return <Waiting>{ruleStrings.rule.waiting}</Waiting>;
  if (!rule?.ownRule) return <Failed what={ruleStrings.rule.failed} why={whyItFailed(error)} again={refetch} />;
  return (
    <>
      <PageHeader title={props.title}>
        <p>
          <Link to="/rules/$ruleId" params={{ ruleId }}>
            {strings.toRule}
          </Link>
        </p>
        <p className="voice">{rule.inWords}</p>
        <p>{may.keepRules ? props.intro : strings.notYours}</p>
      </PageHeader>
      {may.keepRules && props.children(rule, rule.ownRule)}
    </>
  );
}
