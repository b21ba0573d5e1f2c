/** Writes the surveys of a yacht as they came: visit after visit, and between them what was done. */
import type { ActionContext } from '@garboard/actions/context.ts';
import { enterFinding } from '@garboard/actions/finding/enter-finding.ts';
import { sightFinding } from '@garboard/actions/finding/sight-finding.ts';
import { answerZone } from '@garboard/actions/survey-visit/answer-zone.ts';
import { completeVisit } from '@garboard/actions/survey-visit/complete-visit.ts';
import { startVisit } from '@garboard/actions/survey-visit/start-visit.ts';
import { takeReading } from '@garboard/actions/survey-visit/take-reading.ts';
import type { FindingView } from '@garboard/db/finding/list-findings.ts';
import type { VisitRecord } from '@garboard/db/survey-visit/visit-record.ts';
import { type Day, formatDay } from '@garboard/domain/calendar/day.ts';
import type { Evidence } from '@garboard/domain/finding/entry.ts';
import { isOpen } from '@garboard/domain/finding/next-state.ts';
import { type At, wanted } from '../office.ts';
import { askRigger, lookBehind, type Unseen } from './behind-the-lining.ts';
import type { Known } from './known-findings.ts';
import { remedyAfterVisit } from './remedy-after-visit.ts';
import { type FindingPlan, POINTS, type SurveyPlan } from './survey-plan.ts';
import { type Camera, takePhotograph } from './take-photograph.ts';

export type Told = { readonly plan: FindingPlan; view: FindingView };

const LOOKED = { kind: 'looked', words: 'Looked at and tried; it is right.', evidenceId: null } as const;

export async function layOutSurvey(at: At, camera: Camera, plan: SurveyPlan): Promise<void> {
  const told: Told[] = [];
  const unseen: Unseen = { limitation: null };
  for (const [index, day] of plan.days.entries()) {
    const visit = await begin(at(day), camera.vesselId, plan, day);
    await seeAgain(at, day, visit, { told, index, camera });
    for (const finding of plan.findings.filter(({ visit: found }) => found === index))
      told.push({ plan: finding, view: await find(at, day, visit, finding, plan, camera) });
    await lookBehind(at(day), visit, plan, unseen, index);
    if (index === plan.days.length - 1) await askRigger(at, day, visit, plan);
    await measure(at, day, visit, plan, index);
    if (index === plan.days.length - 1) await measureDrain(at, day, visit, plan);
    if (plan.photographsGauge) await photographGauge(at, day, visit, camera, index);
    if (index === plan.days.length - 1 && plan.lastIsOpen) return;
    await answerPlaces(at, day, visit, told, index);
    wanted(await completeVisit(at(day), { visitId: visit.id, expectedVersion: 1, completedOn: formatDay(day) }));
    await remedyAfterVisit({ at, camera }, { day, next: plan.days[index + 1], today: plan.today }, told);
  }
}

async function begin(
  ctx: ActionContext,
  vesselId: string,
  { craft, surveyor }: SurveyPlan,
  day: Day,
): Promise<VisitRecord> {
  const meter = { key: 'meter', maker: 'Fennick', model: 'Hull 2', serial: null, scale: '0 to 100, relative' };
  const detail = {
    ...{ client: null, instructions: null, ashoreSince: null, weather: 'dry, light wind', hoursAboard: 3.5 },
    persons: [{ name: surveyor, capacity: 'surveyor', qualification: null }],
    ...{ place: 'on the hard', water: 'ashore' as const, ownerAttended: false },
    instruments: [{ ...meter, checkedOn: null, nextCheckOn: formatDay((day + 120) as Day) }],
  } as const;
  const visit = { vesselId, craft, purpose: 'condition', startedOn: formatDay(day), detail } as const;
  return wanted(await startVisit(ctx, visit));
}

/** Whatever is open is answered: what was to come back has, the rest is as it was or worse. */
type SoFar = { readonly told: readonly Told[]; readonly index: number; readonly camera: Camera };

async function seeAgain(at: At, day: Day, { id: visitId }: VisitRecord, { told, index, camera }: SoFar): Promise<void> {
  for (const each of told) {
    const { view, plan } = each;
    const isBack = plan.fate === 'came_back' && view.finding.remedy.state === 'verified' && index === plan.visit + 1;
    if (!isBack && !isOpen(view.finding.remedy.state)) continue;
    const isGone = plan.fate === 'seen_gone';
    const seen = isGone ? 'gone' : isBack || index - plan.visit > 1 ? 'worse' : 'unchanged';
    const said = {
      seen,
      visitId,
      said: null,
      words: isBack ? 'It is back.' : null,
      evidence: isGone ? [LOOKED] : isBack ? await shown(at, day, camera, plan.known, visitId) : [],
    } as const;
    const where = { findingId: view.id, expectedVersion: view.version, on: formatDay(day) };
    each.view = wanted(await sightFinding(at(day), { ...where, seen: said }));
  }
}

async function find(
  at: At,
  day: Day,
  visit: VisitRecord,
  { known }: FindingPlan,
  { currency, surveyor }: SurveyPlan,
  camera: Camera,
): Promise<FindingView> {
  const { zone, what, hazard, urgency, trade, cost } = known;
  const estimate = cost === null ? null : { minor: cost * 100, currency, author: surveyor };
  const found = {
    ...{ zone, what, hazard, urgency, trade, estimate, itemId: null, responsible: null, ruleId: null, limit: null },
    ...{ urgentBy: null, visitId: visit.id, words: null },
    evidence: await shown(at, day, camera, known, visit.id),
  };
  return wanted(await enterFinding(at(day), { vesselId: visit.vesselId, on: visit.startedOn, found }));
}

async function shown(at: At, day: Day, camera: Camera, known: Known, visitId: string): Promise<Evidence[]> {
  const { zone, what, scene } = known;
  if (scene === null) return [];
  const frame = { words: what, zone, point: null, visitId };
  const evidenceId = await takePhotograph(at, day, camera, { scene, mended: false, level: 0 }, frame);
  return [{ kind: 'photograph', words: what, evidenceId }];
}

/** The same gauge at every visit, which falls a little each time. */
async function photographGauge(
  at: At,
  day: Day,
  { id: visitId, route }: VisitRecord,
  camera: Camera,
  index: number,
): Promise<void> {
  if (!route.some(({ zone }) => zone === 'fire_gear')) return;
  const frame = { words: 'Gauge of the extinguisher at the companionway', zone: 'fire_gear', visitId };
  const shot = { scene: 'gauge', mended: false, level: 0.62 - index * 0.09 } as const;
  await takePhotograph(at, day, camera, shot, { ...frame, point: 'extinguisher, companionway' });
}

async function measure(
  at: At,
  day: Day,
  { id: visitId }: VisitRecord,
  { moisture }: SurveyPlan,
  index: number,
): Promise<void> {
  for (const [point, value] of (moisture[index] ?? []).entries()) {
    const said = { zone: 'hull_below_water', point: POINTS[point] ?? '', measure: 'moisture', value } as const;
    wanted(await takeReading(at(day), { visitId, said: { ...said, instrument: 'meter', words: null } }));
  }
}

/** Named as the publication's own survey point, so that it is held against it. */
async function measureDrain(at: At, day: Day, { id: visitId, route }: VisitRecord, plan: SurveyPlan): Promise<void> {
  if (plan.gasDrainMm === null || !route.some(({ zone }) => zone === 'gas_locker')) return;
  const said = { zone: 'gas_locker', point: 'drain, inside diameter', measure: 'length', instrument: null } as const;
  wanted(await takeReading(at(day), { visitId, said: { ...said, value: plan.gasDrainMm, words: null } }));
}

async function answerPlaces(
  at: At,
  day: Day,
  { id: visitId, route }: VisitRecord,
  told: readonly Told[],
  index: number,
): Promise<void> {
  const seen = new Set(
    told
      .filter(({ plan, view }) => plan.visit === index || isOpen(view.finding.remedy.state))
      .map(({ plan }) => plan.known.zone),
  );
  for (const { zone } of route) {
    const answer =
      zone === 'trial'
        ? NOT_TRIED
        : seen.has(zone)
          ? { answer: 'sighting', reason: null }
          : { answer: 'sound', reason: null };
    wanted(await answerZone(at(day), { visitId, said: { zone, words: null, ...answer } }));
  }
}
const NOT_TRIED = { answer: 'not_examined', reason: 'engine_not_run' } as const;
