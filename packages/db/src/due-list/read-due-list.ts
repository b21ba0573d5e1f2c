/** The due list and its totals: from the stored obligations, or worked out anew where the question needs it. */
import { addDays, formatDay } from '@garboard/domain/calendar/day.ts';
import { countedAs, type Standing } from '@garboard/domain/due-list/standing.ts';
import { standingOf } from '@garboard/domain/finding/matter.ts';
import type { Cut } from '@garboard/domain/item/work-out-obligations.ts';
import { sourceOf } from '@garboard/domain/safety-notice/notice.ts';
import { workOutMatters } from '../finding/work-out-matters.ts';
import { type Page, pageOf } from '../page.ts';
import type { Scoped } from '../scope.ts';
import { countStored } from './count-stored.ts';
import {
  type DueEntry,
  type DueFilter,
  type DueKey,
  type DueLine,
  type DueQuestion,
  dueKeyOf,
  type MatterCounts,
  type MatterEntry,
  type Totals,
} from './due-entry.ts';
import { countMatters, countsMatters, isMatterSource, listMatters, meansMatters } from './list-matters.ts';
import { listStored } from './list-stored.ts';
import { countUp } from './totals.ts';
import { workOutFleet } from './work-out-fleet.ts';

export type DueAnswer = Page<DueLine> & Totals & { readonly matters: MatterCounts };

export function readDueList(tx: Scoped, question: DueQuestion): Promise<DueAnswer> {
  return question.cut ? workOut(tx, question, question.cut) : readStored(tx, question);
}

async function readStored(tx: Scoped, question: DueQuestion): Promise<DueAnswer> {
  const { filter, limit, day } = question;
  const obligations = isOfMatters(filter) ? { rows: [], more: false } : await listStored(tx, question);
  const matters = meansMatters(filter) ? await listMatters(tx, question) : [];
  const lines: DueLine[] = [...obligations.rows, ...matters].sort(byKey);
  const { rows, more } = pageOf(lines, limit);
  return {
    rows,
    more: more || obligations.more,
    ...(await countStored(tx, day, filter)),
    matters: await countedMatters(tx, question),
  };
}

const isOfMatters = ({ source }: DueFilter) => source !== undefined && isMatterSource(source);

async function countedMatters(tx: Scoped, { filter, day }: DueQuestion): Promise<MatterCounts> {
  return countsMatters(filter) ? countMatters(tx, formatDay(day), filter) : NO_MATTERS;
}
const NO_MATTERS: MatterCounts = { overdue: 0, due: 0, in_date: 0, unknown: 0 };

async function workOut(tx: Scoped, question: DueQuestion, cut: Cut): Promise<DueAnswer> {
  const { filter, limit, after } = question;
  const all = await workOutFleet(tx, cut);
  const matters = (countsMatters(filter) ? await workOutMatters(tx, cut) : []).filter(({ vessel }) =>
    is(filter.vesselId, vessel.id),
  );
  const lines: DueLine[] = [
    ...all.filter((entry) => isAsked(entry, question)),
    ...matters.filter((entry) => isAskedMatter(entry, question)),
  ];
  const asked = lines.filter((line) => isAfter(dueKeyOf(line), after)).sort(byKey);
  const totals = totalsOf(all, matters, question);
  return { ...pageOf(asked.slice(0, limit + 1), limit), ...totals };
}

function isAskedMatter({ matter, dueFrom }: MatterEntry, { filter, day }: DueQuestion): boolean {
  const standing = standingOf(matter.on, dueFrom, formatDay(day));
  const isThere = filter.standing ? standing === filter.standing : standing !== 'unknown';
  if (!meansMatters(filter) || !is(filter.source, matter.source) || !isThere) return false;
  if (filter.horizonDays === undefined || matter.on === null) return true;
  return matter.on <= formatDay(addDays(day, filter.horizonDays));
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

function totalsOf(all: readonly DueEntry[], matters: readonly MatterEntry[], { day, filter }: DueQuestion) {
  const rows = all
    .filter((entry) => isMeant(entry, filter))
    .map(({ vessel, obligation }) => ({
      vesselId: vessel.id,
      standing: countedAs(obligation, day),
      weight: obligation.weight,
      n: 1,
    }));
  const standings = matters.map(({ matter, dueFrom }) => standingOf(matter.on, dueFrom, formatDay(day)));
  const counts: Record<Standing, number> = { ...NO_MATTERS };
  for (const standing of standings) counts[standing] += 1;
  const late = new Set([
    ...rows.filter(({ standing }) => standing === 'overdue').map(({ vesselId }) => vesselId),
    ...matters.filter((_, index) => standings[index] === 'overdue').map(({ vessel }) => vessel.id),
  ]);
  return { counts: countUp(rows), vesselsOverdue: late.size, matters: counts };
}

const parts = (key: DueKey) => [key.overdueAfter, key.itemId, key.ruleId, key.duty];

/** `infinity` sorts after every ISO day as text too. */
function compare(a: DueKey, b: DueKey): number {
  const [left, right] = [parts(a), parts(b)];
  const at = left.findIndex((part, index) => part !== right[index]);
  return at < 0 ? 0 : (left[at] ?? '') < (right[at] ?? '') ? -1 : 1;
}

const byKey = (a: DueLine, b: DueLine) => compare(dueKeyOf(a), dueKeyOf(b));
const isAfter = (key: DueKey, after?: DueKey) => !after || compare(key, after) > 0;
