/** While a vessel is laid up as the clause says, the duties of that scheme are suspended; their clocks run on. */
import { addDays, type Day } from '../calendar/day.ts';
import { dayInWords } from '../calendar/words.ts';
import type { Rule, Suspension } from '../rule/rule.ts';
import type { Situation } from '../vessel/situation.ts';
import { isKnown } from './facts-on-record.ts';
import type { Explanation, Obligation, Suspended } from './obligation.ts';
import type { Cut } from './unit-aboard.ts';

type Span = Pick<Suspended, 'from' | 'until'>;

/** The spans in which it holds, in order of day; the last is open while no later situation ends it. */
export function suspendedSpans(suspension: Suspension, situations: readonly Situation[], cut: Cut): readonly Span[] {
  const spans: Span[] = [];
  let from: Day | null = null;
  for (const situation of situationsAsAt(situations, cut)) {
    const holds = situation.use === suspension.use && situation.dismantled === suspension.dismantled;
    if (holds) from ??= situation.from;
    else if (from !== null) {
      spans.push({ from, until: addDays(situation.from, -1) });
      from = null;
    }
  }
  return from === null ? spans : [...spans, { from, until: null }];
}

/** One a day: of two that begin on the same day the later entry holds. What begins after the day was planned on it. */
function situationsAsAt(situations: readonly Situation[], { knownAt }: Cut): readonly Situation[] {
  const sorted = situations
    .filter(({ recordedAt }) => isKnown(recordedAt, knownAt))
    .sort((a, b) => a.from - b.from || Date.parse(a.recordedAt) - Date.parse(b.recordedAt) || (a.id < b.id ? -1 : 1));
  return sorted.filter((situation, at) => sorted[at + 1]?.from !== situation.from);
}

/** The obligation with the spans in which the rules suspend it; its dates stay as they are. */
export function withSuspension(
  obligation: Obligation,
  rules: readonly Rule[],
  situations: readonly Situation[],
  cut: Cut,
): Obligation {
  const { explanation } = obligation;
  const suspended = rules
    .filter(({ scheme }) => scheme === obligation.scheme)
    .flatMap(({ id, suspends }) =>
      suspends ? suspendedSpans(suspends, situations, cut).map((span): Suspended => ({ ruleId: id, ...span })) : [],
    );
  const last = suspended.at(-1);
  if (!last) return obligation;
  const why = rules.find(({ id }) => id === last.ruleId)?.suspends?.inWords ?? '';
  return {
    ...obligation,
    explanation: { ...explanation, suspended, sentence: `${explanation.sentence} ${spanInWords(last, why)}` },
  };
}

/** The span that holds on the day; `null`: none does. */
export function suspendedOn({ suspended }: Pick<Explanation, 'suspended'>, day: Day): Suspended | null {
  return suspended?.find(({ from, until }) => from <= day && (until === null || day <= until)) ?? null;
}

function spanInWords({ from, until }: Suspended, why: string): string {
  const end = until === null ? '' : ` to ${dayInWords(until)}`;
  return `Suspended from ${dayInWords(from)}${end} ${why}: the clock runs on, and it must be done before she returns to service.`;
}
