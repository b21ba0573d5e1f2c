import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { whyItFailed } from '../api/why-it-failed.ts';
import { useMay } from '../organisation/may.ts';
import { strings } from '../strings/own-rule.ts';
import { Day } from '../ui/day.tsx';
import { Failed } from '../ui/failed.tsx';
import { ruleChangeQuery } from './own-rule.query.ts';
import type { Rule } from './worked-example.ts';
import './own-rule.css';

type OwnRule = NonNullable<Rule['ownRule']>;
type Version = OwnRule['versions'][number];

export function OwnRuleActs({ rule: { id, ownRule } }: { rule: Rule }) {
  if (!useMay().keepRules) return null;
  return (
    <>
      <Link to="/rules/$ruleId/change" params={{ ruleId: id }} className="button">
        {strings.change}
      </Link>
      {ownRule?.inForce !== undefined && (
        <Link to="/rules/$ruleId/end" params={{ ruleId: id }} className="button">
          {strings.end}
        </Link>
      )}
    </>
  );
}

export function HasEnded({ ownRule: { inForce, versions } }: { ownRule: OwnRule }) {
  const began = versions.some(({ changeId }) => changeId);
  return began && inForce === undefined ? <p className="quiet">{strings.over}</p> : null;
}

/** The last laid down first, each with what it does to the dates. */
export function OwnRuleVersions({ ownRule: { inForce, versions } }: { ownRule: OwnRule }) {
  return (
    <section aria-labelledby="versions">
      <h2 id="versions">{strings.versions}</h2>
      <ol className="versions">
        {versions.toReversed().map((version) => (
          <li key={version.number}>
            <p>
              <strong>{strings.version(version.number)}</strong> {version.laysDown ? strings.from : strings.ends}{' '}
              {!version.laysDown && `${strings.from} `}
              <Day on={version.takesEffectOn} />, <span className="quiet">{stateOf(version, inForce)}</span>
            </p>
            {version.laysDown && <p className="voice">{version.laysDown.inWords}</p>}
            <p className="quiet">{strings.said(version.decidedBy, version.reason, version.document)}</p>
            {version.changeId && <Progress changeId={version.changeId} />}
          </li>
        ))}
      </ol>
    </section>
  );
}

function stateOf({ number, changeId, laysDown }: Version, inForce: number | undefined): string {
  if (!changeId) return strings.planned;
  if (number === inForce || (!laysDown && inForce === undefined)) return strings.inForce;
  return strings.past;
}

function Progress({ changeId }: { changeId: string }) {
  const { data, error, refetch } = useQuery(ruleChangeQuery(changeId));
  if (error) return <Failed what={strings.progress.failed} why={whyItFailed(error)} again={refetch} />;
  if (!data) return null;
  const { state, itemsDone, itemsTotal, obligationsChanged } = data;
  return (
    <div className="rule-progress" role="status">
      {state === 'running' && (
        <progress aria-label={strings.progress.name} value={itemsDone} max={Math.max(itemsTotal, 1)} />
      )}
      <span className="quiet">
        {state === 'running'
          ? strings.progress.running(itemsDone, itemsTotal)
          : strings.progress.done(itemsDone, obligationsChanged)}
      </span>
    </div>
  );
}
