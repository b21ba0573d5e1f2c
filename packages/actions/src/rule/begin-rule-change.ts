/** Begins the changes of versions whose day has come, at the organisation's own place: from now on they count for what is stored. */
import { loadOrganisation } from '@garboard/db/organisation/organisations.ts';
import { listVersionsToBegin, lockOwnRule, touchOwnRule } from '@garboard/db/rule/own-rules.ts';
import { insertRuleChange } from '@garboard/db/rule/rule-changes.ts';
import { formatDay } from '@garboard/domain/calendar/day.ts';
import { dayInZone } from '@garboard/domain/calendar/day-in-zone.ts';
import { touchOf } from '@garboard/domain/rule/own-rule-touch.ts';
import { audit } from '../audit.ts';
import { newId } from '../new-id.ts';
import type { Write } from '../write.ts';

/** Of every rule, or of the one that a version has just been laid down of. How many were begun. */
export async function beginWhatIsDue(write: Write, ruleId?: string): Promise<number> {
  const { timeZone } = await loadOrganisation(write.tx);
  const today = formatDay(dayInZone(write.ctx.now, timeZone));
  let begun = 0;
  for (const due of await listVersionsToBegin(write.tx, today, ruleId)) {
    if (!(await begin(write, due))) continue;
    if (ruleId === undefined) await touchOwnRule(write.tx, due.ruleId);
    begun++;
  }
  return begun;
}

type Due = { readonly ruleId: string; readonly number: number };

/** Touched is what the version lays down, and what was in force until now. `false`: somebody else was faster. */
async function begin(write: Write, { ruleId, number }: Due): Promise<boolean> {
  const { tx, ctx } = write;
  const rule = await lockOwnRule(tx, ruleId);
  const version = rule?.versions.find((each) => each.number === number);
  if (!version || version.changeId !== null) return false;
  const inForce = rule?.versions.findLast(({ changeId }) => changeId !== null)?.definition ?? null;
  const change = {
    id: newId(ctx.now),
    ruleId,
    number,
    touch: touchOf([inForce, version.definition]),
    begunAt: ctx.now.toISOString(),
  };
  await insertRuleChange(tx, ctx.organisationId, change);
  audit(write, {
    verb: 'begin_rule_change',
    subject: 'rule_change',
    subjectId: change.id,
    before: null,
    after: change,
  });
  return true;
}
