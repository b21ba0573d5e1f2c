/** A duty under an organisation's own figure: the published figure stays beside it. */
import { dayInWords, periodInWords } from '../calendar/words.ts';
import { isBinding, type Override, type OverrideWeight, standsFor } from '../rule/override.ts';
import type { Duty, Rule, Source } from '../rule/rule.ts';
import type { Grounds } from './limit-count.ts';
import type { Explanation, Obligation } from './obligation.ts';
import { type Remarks, workOutDuty } from './work-out-duty.ts';

/**
 * Advice gives way to the own figure. Law and a certificate's terms do not: theirs stays as it is, first, so
 * that a legal lapse is counted as one, and the tighter figure is an obligation of its own.
 */
export function workOutOverridden(
  rule: Rule,
  grounds: Grounds,
  remarks: Remarks,
  override: Override,
): readonly Obligation[] {
  const published = workOutDuty(rule, grounds, remarks);
  const own = workOutDuty(
    underOverride(rule, override),
    { ...grounds, duty: withPeriod(grounds.duty, override) },
    remarks,
  );
  if (!published || !own) return [];
  const explanation = explainOverride(own.explanation, published, grounds.duty, override);
  return isBinding(rule) ? [published, { ...own, duty: tightened(own.duty), explanation }] : [{ ...own, explanation }];
}

/** The name of the obligation that stands beside the published one. */
const tightened = (duty: string) => `${duty}.tightened`;

/** The figure stands in the document named, which nobody here has read. */
function underOverride(rule: Rule, { weight, document }: Override): Rule {
  return { ...rule, weight, source: { publication: document, clause: null, address: null, status: 'second_hand' } };
}

/** The document is taken at its word: the published window and an authority's permission are not added to it. */
function withPeriod({ window: _, extension: __, ...duty }: Duty, { weight, period }: Override): Duty {
  return {
    ...duty,
    inWords: `By ${WHOSE[weight]} figure the interval is ${periodInWords(period)}`,
    limits: duty.limits.map((limit) =>
      standsFor(limit, duty)
        ? {
            kind: 'after',
            from: limit.from,
            plus: { kind: 'fixed', period },
            ...(limit.counting && { counting: limit.counting }),
          }
        : limit,
    ),
  };
}

const WHOSE: Record<OverrideWeight, string> = {
  maker: 'the maker’s',
  insurer: 'the insurer’s',
  own: 'the organisation’s own',
};

function explainOverride(
  own: Explanation,
  { explanation: published, outcome }: Obligation,
  { inWords }: Duty,
  override: Override,
): Explanation {
  const leadsTo = outcome.kind === 'dated' ? `leads to ${dayInWords(outcome.dueOn)}` : 'gives no date here';
  const cited = citation(published.source);
  const set = `Set by ${override.decidedBy} from ${dayInWords(override.from)}: “${override.reason}” (${override.document}).`;
  const { binds } = published;
  return {
    ...own,
    sentence: `${own.sentence} ${set} Published (${cited}): ${inWords}, which ${leadsTo}.`,
    alsoCounted: [
      ...own.alsoCounted,
      ...(binds ? [{ ...binds, limit: `${binds.limit}, as published (${cited})` }] : []),
    ],
    overrideId: override.id,
  };
}

function citation({ publication, clause }: Source): string {
  return [publication, clause].filter(Boolean).join(', ') || 'common practice, no source';
}
