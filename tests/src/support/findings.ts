/** Short ways to a finding, through the actions and nothing else. */
import type { ActionContext } from '@garboard/actions/context.ts';
import { enterFinding, type NewFinding } from '@garboard/actions/finding/enter-finding.ts';
import { takeRemedyStep } from '@garboard/actions/finding/take-remedy-step.ts';
import type { FindingView } from '@garboard/db/finding/list-findings.ts';
import { accepted, TODAY } from './organisation.ts';

/** One that somebody other than the writer has mended. */
export async function aFindingReportedDone(ctx: ActionContext, vesselId: string): Promise<FindingView> {
  const { id, version } = await aFinding(ctx, vesselId, { what: 'Clip at the regulator loose' }, '2026-11-20');
  const doneBy = { name: 'Ines Vale', capacity: 'gas_engineer', certificate: null } as const;
  const step = {
    step: 'reported_done',
    work: 'Clip renewed',
    doneOn: '2026-11-22',
    doneBy,
    evidence: [],
    facts: [],
  } as const;
  return accepted(await takeRemedyStep(ctx, { findingId: id, expectedVersion: version, step, facts: [] }));
}

/** A cracked gas hose, to be dealt with within weeks, found today. */
export async function aFinding(
  ctx: ActionContext,
  vesselId: string,
  more: Partial<NewFinding['found']> = {},
  on = TODAY,
): Promise<FindingView> {
  const found: NewFinding['found'] = {
    zone: 'gas_installation',
    itemId: null,
    what: 'Gas hose cracked at the cooker',
    hazard: 'fire_and_gas',
    trade: null,
    estimate: null,
    responsible: null,
    ruleId: null,
    limit: null,
    urgency: 'within_weeks',
    urgentBy: null,
    visitId: null,
    words: null,
    evidence: [],
    ...more,
  };
  return accepted(await enterFinding(ctx, { vesselId, on, found }));
}
