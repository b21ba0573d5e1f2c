/** What no schema sees about an organisation's own rule. */
import { parsePeriod } from '../calendar/period.ts';
import { findItemKind } from '../item/item-kind.ts';
import { isSensible, MOST_YEARS } from './override.ts';
import type { OwnLimit, OwnRuleDefinition } from './own-rule.ts';

export type OwnRuleProblem = { readonly pointer: string; readonly detail: string };

/** Every one at once; a definition with none can be turned into a rule. */
export function ownRuleProblems(definition: OwnRuleDefinition): readonly OwnRuleProblem[] {
  return [
    ...kindProblems(definition),
    ...definition.limits.flatMap((limit, at) => limitProblems(limit, at, definition)),
    ...firstProblems(definition),
    ...windowProblems(definition),
    ...definition.resets.flatMap(({ act }, at) =>
      RESETTING.has(act) ? [] : [problem(`/resets/${at}/act`, 'is no act that could start a clock anew')],
    ),
  ];
}

const problem = (pointer: string, detail: string): OwnRuleProblem => ({ pointer, detail });

/** The others are dates, readings or the end. */
const RESETTING: ReadonlySet<string> = new Set(['inspected', 'serviced', 'tested', 'replaced', 'overhauled']);

function kindProblems({ kinds }: OwnRuleDefinition): OwnRuleProblem[] {
  return kinds.flatMap((kind, at) => {
    if (!findItemKind(kind)) return [problem(`/kinds/${at}`, 'is no kind of item in the catalogue')];
    return kinds.indexOf(kind) < at ? [problem(`/kinds/${at}`, 'is named already')] : [];
  });
}

function limitProblems(limit: OwnLimit, at: number, { limits, resets, kinds }: OwnRuleDefinition): OwnRuleProblem[] {
  const twice = limits.findIndex((other) => sameKind(other, limit)) < at;
  return [
    ...(twice ? [problem(`/limits/${at}`, 'counts what another limit counts already')] : []),
    ...(needsAct(limit) && resets.length === 0
      ? [problem('/resets', 'must name the act that the limits count from')]
      : []),
    ...periodOfLimit(limit, `/limits/${at}`),
    ...(limit.kind === 'running_hours' && !kinds.some(hasMeter)
      ? [problem(`/limits/${at}`, 'needs a thing with a running-hours meter; none of these kinds has one')]
      : []),
  ];
}

function sameKind(a: OwnLimit, b: OwnLimit): boolean {
  if (a.kind === 'interval' && b.kind === 'interval') return a.from === b.from;
  if (a.kind === 'before_event' && b.kind === 'before_event') return a.event === b.event;
  return a.kind === b.kind;
}

function needsAct(limit: OwnLimit): boolean {
  switch (limit.kind) {
    case 'interval':
      return limit.from === 'last_done';
    case 'printed_expiry':
      return false;
    case 'running_hours':
    case 'before_event':
      return true;
  }
}

function periodOfLimit(limit: OwnLimit, pointer: string): OwnRuleProblem[] {
  switch (limit.kind) {
    case 'interval':
      return periodProblems(`${pointer}/plus`, limit.plus);
    case 'before_event':
      return periodProblems(`${pointer}/within`, limit.within);
    case 'printed_expiry':
    case 'running_hours':
      return [];
  }
}

function periodProblems(pointer: string, text: string): OwnRuleProblem[] {
  const period = parsePeriod(text);
  if (period && isSensible(period)) return [];
  return [problem(pointer, `must be at least a day and at most ${MOST_YEARS} years`)];
}

const hasMeter = (kind: OwnRuleDefinition['kinds'][number]) => findItemKind(kind)?.dates.meter !== undefined;

function firstProblems({ first, limits }: OwnRuleDefinition): OwnRuleProblem[] {
  if (!first) return [];
  const idle = limits.some(needsAct) ? [] : [problem('/first', 'never counts: no limit counts from the last act')];
  return [...idle, ...periodProblems('/first/plus', first.plus)];
}

function windowProblems({ window }: OwnRuleDefinition): OwnRuleProblem[] {
  if (!window) return [];
  return (['before', 'after'] as const).flatMap((side) => {
    const period = parsePeriod(window[side]);
    const none = period !== null && period.months + period.days === 0;
    return none ? [] : periodProblems(`/window/${side}`, window[side]);
  });
}
