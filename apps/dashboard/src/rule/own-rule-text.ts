/** A version of an own rule as a draft to go on from, and the faults that the API finds, each at its box. */
import type { Problem } from '@garboard/client/api-problem.ts';
import type { components } from '@garboard/client/generated/api.d.ts';
import { strings } from '../strings/own-rule.ts';
import { formatDay } from '../ui/calendar.ts';
import { periodToType } from '../ui/read-period.ts';
import type { OwnRuleBox, OwnRuleDraft, OwnRuleFaults } from './own-rule-draft.ts';
import { boxesOf, type LimitBox, NO_LIMITS } from './own-rule-limits.ts';

type Text = components['schemas']['OwnRuleText'];

export function emptyOwnRule(today: string): OwnRuleDraft {
  return {
    ...NO_LIMITS,
    ...{ inWords: '', kinds: [], actionKind: 'inspect', actionWords: '', vessels: 'all', scheme: '', vesselIds: [] },
    ...{ first: '', firstFrom: 'installed', before: '', after: '', act: 'inspected', test: '', by: '', weight: 'own' },
    ...{ takesEffectOn: formatDay(today), decidedBy: '', reason: '', document: '', moreLimits: [], moreResets: [] },
  };
}

/** Who decides the next version, why and from when is asked anew. */
export function draftOf(text: Text, today: string): OwnRuleDraft {
  const { boxes, more } = boxesOf(text.limits);
  const [reset, ...moreResets] = text.resets;
  const single = reset && (reset.tests?.length ?? 0) <= 1 && reset.by.length <= 1;
  return {
    ...emptyOwnRule(today),
    ...boxes,
    moreLimits: more,
    ...{ inWords: text.inWords, kinds: text.kinds, actionKind: text.action.kind, actionWords: text.action.words },
    ...{ vessels: text.vessels.which, weight: text.weight },
    ...(text.vessels.which === 'under_scheme' && { scheme: text.vessels.scheme }),
    ...(text.vessels.which === 'chosen' && { vesselIds: text.vessels.vesselIds }),
    ...(text.first && { first: periodToType(text.first.plus), firstFrom: text.first.from }),
    ...(text.window && { before: unlessNone(text.window.before), after: unlessNone(text.window.after) }),
    ...(single ? { act: reset.act, test: reset.tests?.[0] ?? '', by: reset.by[0] ?? '' } : { act: '' }),
    moreResets: single ? moreResets : text.resets,
  };
}

const unlessNone = (period: string) => (/^P0/.test(period) ? '' : periodToType(period));

const BOX_AT: readonly (readonly [RegExp, OwnRuleBox])[] = [
  [/^\/inWords/, 'inWords'],
  [/^\/kinds/, 'kinds'],
  [/^\/action\/words/, 'actionWords'],
  [/^\/vessels\/vesselIds/, 'vesselIds'],
  [/^\/vessels/, 'vessels'],
  [/^\/limits$/, 'lastDone'],
  [/^\/first/, 'first'],
  [/^\/window\/before/, 'before'],
  [/^\/window/, 'after'],
  [/^\/resets/, 'act'],
  [/^\/weight/, 'weight'],
  [/^\/takesEffectOn/, 'takesEffectOn'],
  [/^\/decidedBy/, 'decidedBy'],
  [/^\/reason/, 'reason'],
  [/^\/document/, 'document'],
];

/** `limitBoxes`: in which box each limit that was sent is typed. */
export function ownRuleFaults(
  problem: Problem,
  limitBoxes: readonly LimitBox[],
): { faults: OwnRuleFaults; others: string[] } {
  const faults: OwnRuleFaults = {};
  const others: string[] = [];
  for (const { pointer, detail } of problem.errors ?? []) {
    const limit = limitBoxes[Number(/^\/limits\/(\d+)/.exec(pointer)?.[1] ?? -1)];
    const box = limit ?? BOX_AT.find(([place]) => place.test(pointer))?.[1];
    if (box) faults[box] = detail;
    else others.push(`${pointer.slice(1)}: ${detail}`);
  }
  const isBare = others.length === 0 && Object.keys(faults).length === 0;
  return { faults, others: isBare ? [problem.detail ?? problem.title] : others };
}

/** For the head of the form. */
export function toldOwnRuleFaults(faults: OwnRuleFaults) {
  return (Object.keys(strings.box) as OwnRuleBox[]).flatMap((box) => {
    const fault = faults[box];
    return fault ? [{ id: `rule-${box}`, name: strings.box[box], fault }] : [];
  });
}
