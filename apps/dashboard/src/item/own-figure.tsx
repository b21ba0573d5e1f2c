import { Link } from '@tanstack/react-router';
import { useMay } from '../organisation/may.ts';
import { strings } from '../strings/item.ts';
import type { Obligation } from './item.query.ts';
import { noticeOf } from './notice-of.ts';

/** The way to a figure of our own: the one that stands behind this date, or one to be set. An own rule is changed itself; a notice is answered. */
export function OwnFigure(props: { obligation: Obligation; itemId: string; vesselId: string }) {
  const { obligation, itemId, vesselId } = props;
  const may = useMay();
  const { ruleId, duty, scheme, explanation } = obligation;
  if (explanation.overrideId) {
    return (
      <p className="own-figure">
        <Link to="/overrides/$overrideId" params={{ overrideId: explanation.overrideId }}>
          {strings.seeOwnFigure}
        </Link>
      </p>
    );
  }
  if (!may.keepRegister || scheme === 'own' || noticeOf(ruleId)) return null;
  return (
    <p className="own-figure">
      <Link to="/vessels/$vesselId/figure" params={{ vesselId }} search={{ item: itemId, rule: ruleId, duty }}>
        {strings.ownFigure}
      </Link>
    </p>
  );
}
