/** What somebody has typed so far of a figure of their own. */
import type { Problem } from '@garboard/client/api-problem.ts';
import { strings } from '../strings/override.ts';
import { strings as ownStrings } from '../strings/own-rule.ts';
import { readPeriod } from '../ui/read-period.ts';
import type { NewOverride } from './override.query.ts';
import { readDay } from './own-rule-draft.ts';

export type OverrideBox = keyof typeof strings.box;
export type OverrideDraft = Readonly<Record<OverrideBox, string>>;
export type OverrideFaults = Partial<Record<OverrideBox, string>>;
type About = Pick<NewOverride, 'ruleId' | 'duty'> & { readonly itemId: string };

export function toNewOverride(
  draft: OverrideDraft,
  { itemId, ruleId, duty }: About,
): { kind: 'ready'; body: NewOverride } | { kind: 'faults'; faults: OverrideFaults } {
  const period = readPeriod(draft.period);
  const from = readDay(draft.from);
  const empty = (['decidedBy', 'reason', 'document'] as const).filter((box) => draft[box].trim() === '');
  if (period === null || from.kind === 'fault' || empty.length > 0) {
    const faults: OverrideFaults = {
      ...(period === null && { period: ownStrings.faults.period }),
      ...(from.kind === 'fault' && { from: from.why }),
      ...Object.fromEntries(empty.map((box) => [box, strings.empty])),
    };
    return { kind: 'faults', faults };
  }
  const said = { decidedBy: draft.decidedBy.trim(), reason: draft.reason.trim(), document: draft.document.trim() };
  const weight = draft.weight as NewOverride['weight'];
  const body = { ...(draft.about === 'item' && { itemId }), ...{ ruleId, duty, period, weight, ...said } };
  return { kind: 'ready', body: { ...body, from: from.date } };
}

/** What has no box — a duty without an interval, a rule that does not bear on it — is said at the head. */
export function overrideFaults({ errors = [], detail, title }: Problem): { faults: OverrideFaults; others: string[] } {
  const boxOf = (pointer: string) => (Object.keys(strings.box) as OverrideBox[]).find((box) => pointer === `/${box}`);
  const faults: OverrideFaults = {};
  const others: string[] = [];
  for (const each of errors) {
    const box = boxOf(each.pointer);
    if (box) faults[box] = each.detail;
    else others.push(`${each.pointer.slice(1)}: ${each.detail}`);
  }
  return { faults, others: errors.length === 0 ? [detail ?? title] : others };
}

export function toldOverrideFaults(faults: OverrideFaults) {
  return (Object.entries(faults) as [OverrideBox, string][]).map(([box, fault]) => ({
    id: `figure-${box}`,
    name: strings.box[box],
    fault,
  }));
}
