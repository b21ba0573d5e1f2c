/** Why a thing is due when it is: the sentence, what bound, what else counted, the facts, the source. */
import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { whyItFailed } from '../api/why-it-failed.ts';
import { useMay } from '../organisation/may.ts';
import { strings } from '../strings/item.ts';
import { Failed } from '../ui/failed.tsx';
import { Waiting } from '../ui/waiting.tsx';
import { emphasised } from './emphasised.tsx';
import { ExplanationParts } from './explanation-parts.tsx';
import { FactList } from './fact-list.tsx';
import { factThatAnswers } from './fact-that-answers.ts';
import { factsQuery, type Obligation, obligationsQuery } from './item.query.ts';
import { KindCaution } from './kind-caution.tsx';
import { noticeOf } from './notice-of.ts';
import { OwnFigure } from './own-figure.tsx';
import { SourceLine } from './source-line.tsx';
import './reasoning.css';

export type ObligationName = { itemId: string; ruleId: string; duty: string };
type Props = { of: ObligationName; kind: string; vesselId: string; asAt: string | undefined };

export function Reasoning({ of, kind, vesselId, asAt }: Props) {
  const obligations = useQuery(obligationsQuery(of.itemId, asAt));
  const facts = useQuery(factsQuery(of.itemId));
  if (obligations.isPending || facts.isPending) return <Waiting>{strings.waiting}</Waiting>;
  if (!obligations.data || !facts.data) {
    const again = () => void Promise.all([obligations.refetch(), facts.refetch()]);
    return <Failed what={strings.failed} why={whyItFailed(obligations.error ?? facts.error)} again={again} />;
  }
  const obligation = obligations.data.items.find((each) => each.ruleId === of.ruleId && each.duty === of.duty);
  if (!obligation) return <p className="quiet">{strings.gone}</p>;
  return (
    <div className={`reasoning ${obligation.standing}`}>
      <div className="reasoning-words">
        <p className="voice reasoning-sentence">{emphasised(obligation)}</p>
        <ExplanationParts obligation={obligation} facts={facts.data} />
        <KindCaution kind={kind} />
      </div>
      <div className="reasoning-side">
        <h3>{strings.facts}</h3>
        <FactList facts={facts.data} itemId={of.itemId} vesselId={vesselId} />
        <h3>{strings.source}</h3>
        <SourceLine obligation={obligation} />
        <Acts obligation={obligation} itemId={of.itemId} vesselId={vesselId} />
        <OwnFigure obligation={obligation} itemId={of.itemId} vesselId={vesselId} />
      </div>
    </div>
  );
}

function Acts({ obligation, itemId, vesselId }: { obligation: Obligation; itemId: string; vesselId: string }) {
  const may = useMay();
  if (!may.recordFacts) return null;
  const noticeId = noticeOf(obligation.ruleId);
  if (noticeId)
    return (
      <p className="acts">
        <Link to="/notices/$noticeId/answer" params={{ noticeId }} search={{ item: itemId }} className="button first">
          {strings.answerNotice}
        </Link>
      </p>
    );
  return (
    <p className="acts">
      <Link
        to="/vessels/$vesselId/record"
        params={{ vesselId }}
        search={{ item: itemId, ...factThatAnswers(obligation) }}
        className="button first"
      >
        {strings.record[obligation.action.kind]}
      </Link>
      <Link to="/vessels/$vesselId/record" params={{ vesselId }} search={{ item: itemId }} className="button">
        {strings.recordFact}
      </Link>
    </p>
  );
}
