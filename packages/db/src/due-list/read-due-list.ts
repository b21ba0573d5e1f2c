/** The due list and its totals: from the stored obligations, or worked out anew where the question needs it. */
import { addDays } from '@garboard/domain/calendar/day.ts';
import { countedAs } from '@garboard/domain/due-list/standing.ts';
import { sourceOf } from '@garboard/domain/safety-notice/notice.ts';
import { type Page, pageOf } from '../page.ts';
import type { Scoped } from '../scope.ts';
import { countStored } from './count-stored.ts';
import { type DueEntry, type DueFilter, type DueKey, type DueQuestion, dueKeyOf, type Totals } from './due-entry.ts';
import { listStored } from './list-stored.ts';
import { countUp } from './totals.ts';
import { workOutFleet } from './work-out-fleet.ts';

export type DueAnswer = Page<DueEntry> & Totals;

export async function readDueList(tx: Scoped, question: DueQuestion): Promise<DueAnswer> {
  if (!question.cut)
    return { ...(await listStored(tx, question)), ...(await countStored(tx, question.day, question.filter)) };
  const all = await workOutFleet(tx, question.cut);
  const asked = all.filter((entry) => isAsked(entry, question) && isAfter(dueKeyOf(entry), question.after)).sort(byKey);
  return { ...pageOf(asked.slice(0, question.limit + 1), question.limit), ...totalsOf(all, question) };
}

function isAsked({ vessel, item, obligation }: DueEntry, { filter, day }: DueQuestion): boolean {
  return isMeant({ vessel, item, obligation }, filter) && isStanding(filter, obligation, day);
}

/** Which things the question is about, however they stand. */
function isMeant({ vessel, item, obligation }: DueEntry, filter: DueFilter): boolean {
  return (
    is(filter.vesselId, vessel.id) &&
    is(filter.kind, item.kind) &&
    is(filter.scheme, obligation.scheme) &&
    is(filter.weight, obligation.weight) &&
    is(filter.source, sourceOf(obligation.ruleId))
  );
}

const is = <T>(asked: T | undefined, found: T) => asked === undefined || asked === found;

function isStanding(filter: DueFilter, obligation: DueEntry['obligation'], day: DueQuestion['day']): boolean {
  const { outcome } = obligation;
  const group = countedAs(obligation, day);
  if (filter.suspended ? group !== 'suspended' : group === 'suspended') return false;
  if (!filter.suspended && (filter.standing ? group !== filter.standing : group === 'unknown')) return false;
  if (filter.horizonDays === undefined || outcome.kind === 'undated') return true;
  return outcome.overdueAfter <= addDays(day, filter.horizonDays);
}

function totalsOf(all: readonly DueEntry[], { day, filter }: DueQuestion): Totals {
  const rows = all
    .filter((entry) => isMeant(entry, filter))
    .map(({ vessel, obligation }) => ({
      vesselId: vessel.id,
      standing: countedAs(obligation, day),
      weight: obligation.weight,
      n: 1,
    }));
  const late = new Set(rows.filter(({ standing }) => standing === 'overdue').map(({ vesselId }) => vesselId));
  return { counts: countUp(rows), vesselsOverdue: late.size };
}

const parts = (key: DueKey) => [key.overdueAfter, key.itemId, key.ruleId, key.duty];

/** `infinity` sorts after every ISO day as text too. */
function compare(a: DueKey, b: DueKey): number {
  const [left, right] = [parts(a), parts(b)];
  const at = left.findIndex((part, index) => part !== right[index]);
  return at < 0 ? 0 : (left[at] ?? '') < (right[at] ?? '') ? -1 : 1;
}

const byKey = (a: DueEntry, b: DueEntry) => compare(dueKeyOf(a), dueKeyOf(b));
const isAfter = (key: DueKey, after?: DueKey) => !after || compare(key, after) > 0;
