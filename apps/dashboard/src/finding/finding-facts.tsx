import type { ReactNode } from 'react';
import { SourceLink } from '../item/source-link.tsx';
import { strings } from '../strings/finding.ts';
import { hazardWords, seenWords, tradeWords } from '../strings/finding-codes.ts';
import { nameOfZone } from '../strings/zones.ts';
import { formatDay } from '../ui/calendar.ts';
import { Day } from '../ui/day.tsx';
import type { Finding } from './finding.query.ts';
import { readable } from './finding-line.tsx';
import { Urgency } from './urgency.tsx';

const { one } = strings;
const { names } = one;

export function FindingFacts({ finding }: { finding: Finding }) {
  const { due, estimate, limit, lastSeen } = finding;
  const seen = lastSeen === 'new' ? one.new : seenWords[lastSeen];
  const lines: [string, ReactNode][] = [
    [names.where, nameOfZone(finding.zone)],
    [names.thing, finding.item?.label],
    [names.hazard, hazardWords[finding.hazard]],
    [names.urgency, <Urgency key="urgency" finding={finding} />],
    [names.due, due && <Due due={due} />],
    [names.seen, one.seen(formatDay(finding.firstSeenOn), formatDay(finding.lastSeenOn), seen)],
    [names.work, finding.work],
    [names.trade, finding.trade && tradeWords[finding.trade]],
    [names.responsible, finding.responsible],
    [names.estimate, estimate && one.estimate(`${estimate.amount} ${estimate.currency}`, estimate.author)],
    [
      names.owner,
      finding.ownerSaid &&
        one.ownerSaid(
          finding.ownerSaid.yes,
          finding.ownerSaid.name,
          formatDay(finding.ownerSaid.on),
          finding.ownerSaid.offer,
        ),
    ],
    [names.limit, limit && `${formatDay(limit.on)}: ${limit.source}`],
    [
      names.rule,
      finding.ruleId && (
        <SourceLink key="rule" ruleId={finding.ruleId}>
          {finding.ruleId}
        </SourceLink>
      ),
    ],
  ];
  return (
    <section aria-labelledby="facts">
      <h2 id="facts">{one.facts}</h2>
      <dl className="finding-facts">
        {lines
          .filter(([, value]) => value !== undefined && value !== '')
          .map(([name, value]) => (
            <div key={name}>
              <dt>{name}</dt>
              <dd>{value}</dd>
            </div>
          ))}
      </dl>
    </section>
  );
}

function Due({ due: { on, because } }: { due: NonNullable<Finding['due']> }) {
  return (
    <>
      {on && (
        <>
          <Day on={on} />.{' '}
        </>
      )}
      {readable(because)}
    </>
  );
}
