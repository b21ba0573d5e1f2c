/** What is done about findings after a visit, and before the next one. */
import { enterFinding } from '@garboard/actions/finding/enter-finding.ts';
import { mergeFinding } from '@garboard/actions/finding/merge-finding.ts';
import { type RemedyStep, takeRemedyStep } from '@garboard/actions/finding/take-remedy-step.ts';
import { verifyFinding } from '@garboard/actions/finding/verify-finding.ts';
import { addDays, type Day, formatDay } from '@garboard/domain/calendar/day.ts';
import type { Evidence } from '@garboard/domain/finding/entry.ts';
import { type At, wanted } from '../office.ts';
import type { Known } from './known-findings.ts';
import type { Told } from './lay-out-survey.ts';
import { type Camera, takePhotograph } from './take-photograph.ts';

const WEEKS = 28;
const HALF_YEAR = 190;

/** `next`: the day of the visit that follows; `undefined` after the last one. */
type Span = { readonly day: Day; readonly next: Day | undefined; readonly today: Day };

type Hand = { readonly at: At; readonly camera: Camera };

export async function remedyAfterVisit(hand: Hand, span: Span, told: readonly Told[]): Promise<void> {
  for (const each of told.filter(({ view }) => view.finding.remedy.state === 'found')) {
    const { fate } = each.plan;
    if (fate === 'verified' || (fate === 'came_back' && span.next !== undefined)) await mend(hand, span, each);
    else if (fate === 'entered_twice') await enterTwice(hand, span.day, each);
    else for (const step of stepsOf(each, span.day)) await take(hand.at, addDays(span.day, 6), each, step);
  }
}

/** Somebody enters it once more in passing; the two are made one. */
async function enterTwice({ at, camera }: Hand, day: Day, each: Told): Promise<void> {
  const { plan, view } = each;
  const { zone, what, hazard, urgency, trade } = plan.known;
  const found = {
    ...{ zone, hazard, urgency, trade, estimate: null, itemId: null, responsible: null, ruleId: null, limit: null },
    ...{ what: `${what}, seen in passing`, urgentBy: null, visitId: null, words: null, evidence: [] },
  };
  const on = addDays(day, 3);
  const twin = wanted(await enterFinding(at(on), { vesselId: camera.vesselId, on: formatDay(on), found }));
  const into = { into: view.id, reason: 'The same thing, entered twice.' };
  wanted(await mergeFinding(at(addDays(day, 4)), { findingId: twin.id, expectedVersion: twin.version, ...into }));
  // That it took the other in is an entry of its own.
  each.view = { ...view, version: view.version + 1 };
}

/** Reported four weeks on and looked at a week later, as far as these days have come. */
async function mend({ at, camera }: Hand, { day, next, today }: Span, each: Told): Promise<void> {
  const { work, mended } = each.plan.known;
  const doneOn = addDays(day, WEEKS);
  const lookedOn = addDays(doneOn, 7);
  const hasCome = (on: Day) => on < (next ?? today);
  const planned = { step: 'planned', work, forDay: formatDay(doneOn), trade: null, responsible: null } as const;
  if (!hasCome(doneOn)) return take(at, addDays(day, 1), each, planned);
  const evidence = await shownMended(at, doneOn, camera, each.plan.known);
  await take(at, doneOn, each, reported(each, doneOn, evidence));
  if (!hasCome(lookedOn)) return;
  const verdict = {
    right: true,
    words: null,
    evidence: [{ kind: 'looked', words: mended, evidenceId: null }],
  } as const;
  const { id, version } = each.view;
  each.view = wanted(await verifyFinding(at(lookedOn), { findingId: id, expectedVersion: version, verdict }));
}

async function shownMended(at: At, day: Day, camera: Camera, known: Known): Promise<readonly Evidence[]> {
  const { zone, mended: words, scene } = known;
  if (scene === null) return [];
  const frame = { words, zone, point: null, visitId: null };
  const evidenceId = await takePhotograph(at, day, camera, { scene, mended: true, level: 1 }, frame);
  return [{ kind: 'photograph', words, evidenceId }];
}

const reported = ({ plan }: Pick<Told, 'plan'>, doneOn: Day, evidence: readonly Evidence[] = []): RemedyStep => ({
  ...{ step: 'reported_done', work: plan.known.mended, doneOn: formatDay(doneOn), evidence, facts: [] },
  doneBy: {
    name: plan.known.trade === 'own_crew' ? 'the crew' : plan.yard,
    capacity: plan.known.trade === 'own_crew' ? 'crew' : 'yard',
    certificate: null,
  },
});

function stepsOf({ plan }: Pick<Told, 'plan'>, day: Day): readonly RemedyStep[] {
  const put = { reviewOn: formatDay(addDays(day, HALF_YEAR)), responsible: 'the keeper of the fleet' };
  const { work } = plan.known;
  switch (plan.fate) {
    case 'proposed':
      return [{ step: 'proposed', work, trade: null, estimate: null }];
    case 'planned':
      return [{ step: 'planned', work, forDay: null, trade: null, responsible: plan.yard }];
    case 'in_hand':
      return [{ step: 'begun', words: null }];
    case 'reported':
      return [reported({ plan }, addDays(day, 6))];
    case 'deferred':
      return [
        { step: 'deferred', until: put.reviewOn, ...put, reason: 'To be done when she is next ashore for long.' },
      ];
    case 'accepted':
      return [{ step: 'accepted', ...put, reason: 'It takes nothing from her use.' }];
    case 'entered_in_error':
      return [{ step: 'entered_in_error', reason: 'Belongs to another boat.' }];
    case 'verified':
    case 'came_back':
    case 'open':
    case 'entered_twice':
    case 'seen_gone':
      return [];
  }
}

async function take(at: At, day: Day, each: Told, step: RemedyStep): Promise<void> {
  const { id, version } = each.view;
  each.view = wanted(await takeRemedyStep(at(day), { findingId: id, expectedVersion: version, step, facts: [] }));
}
