/**
 * Whether a step may be taken from where a finding stands. One answer for every step, with all the reasons
 * against it at once.
 */
import type { Role } from '../organisation/permission.ts';
import { isMoreUrgent } from './codes.ts';
import type { Entry, Evidence, IsoDay, RemedialLimit, UrgencySaid } from './entry.ts';
import type { Finding } from './finding.ts';
import { isOpen, type Move, NEXT, type State } from './next-state.ts';
import { moveOfSighting } from './remedy-after.ts';

/** What the rule needs to know besides the finding and the step. */
export type Ground = {
  readonly today: IsoDay;
  readonly role: Role;
  /** The visit that the sighting belongs to names a surveyor. */
  readonly surveyorAttends: boolean;
  /** The latest day that a review may be put to. */
  readonly reviewBy: IsoDay;
  /** What the rule that it breaks asks of its thing by when, where that is law or a certificate's terms. */
  readonly ruleLimit: RemedialLimit | null;
  /** Whether somebody other than whoever did the work must look. */
  readonly secondPairOfEyes: boolean;
};

export type StepFault = { readonly pointer: string; readonly detail: string };

/** Why the step cannot be taken at all, or what is wrong with what it says. */
export type Judged =
  | { readonly kind: 'taken' }
  | { readonly kind: 'not_from_here'; readonly state: State; readonly step: Move | Aside }
  | { readonly kind: 'faults'; readonly faults: readonly StepFault[] };

export function judgeStep(finding: Finding, entry: Entry, ground: Ground): Judged {
  const { state } = finding.remedy;
  const step = moveOf(entry);
  if (!isPossible(state, step)) return { kind: 'not_from_here', state, step };
  const faults = [...dayFaults(entry, finding, ground), ...faultsOf(finding, entry, ground)];
  return faults.length > 0 ? { kind: 'faults', faults } : { kind: 'taken' };
}

/** What leads nowhere by itself. */
type Aside = 'amended' | 'seen' | 'split_off' | 'owner_answered';

function moveOf(entry: Entry): Move | Aside {
  switch (entry.step) {
    case 'seen':
      return moveOfSighting(entry.seen) ?? 'seen';
    case 'found':
    case 'took_in':
    case 'split_from':
      return 'amended';
    case 'amended':
    case 'split_off':
    case 'owner_answered':
    case 'proposed':
    case 'planned':
    case 'begun':
    case 'reported_done':
    case 'sent_back':
    case 'verified':
    case 'deferred':
    case 'accepted':
    case 'entered_in_error':
    case 'reopened':
    case 'merged_into':
      return entry.step;
  }
}

/** What is not of the table may be written while the finding is open. */
function isPossible(state: State, step: ReturnType<typeof moveOf>): boolean {
  return step === 'amended' || step === 'seen' || step === 'split_off' || step === 'owner_answered'
    ? isOpen(state)
    : NEXT[state][step] !== undefined;
}

function dayFaults(entry: Entry, { firstSeenOn }: Finding, { today }: Ground): StepFault[] {
  if (entry.on > today) return [fault('/on', 'lies in the future')];
  return entry.step === 'seen' && entry.on < firstSeenOn
    ? [fault('/on', `lies before ${firstSeenOn}, when it was found`)]
    : [];
}

function faultsOf(finding: Finding, entry: Entry, ground: Ground): StepFault[] {
  switch (entry.step) {
    case 'seen':
      return [
        ...goneFaults(finding, entry, ground),
        ...loweringFaults(finding, entry.said, ground.role === 'surveyor' || ground.surveyorAttends),
      ];
    case 'amended':
      return [...loweringFaults(finding, entry.said, false), ...reasonFaults(finding, entry)];
    case 'reported_done':
      return doneFaults(finding, entry.doneOn, ground);
    case 'verified':
      return verifyFaults(finding, entry, ground);
    case 'deferred':
      return [...leftFaults(finding, entry.reviewOn, ground), ...deferralFaults(limitOf(finding, ground), entry)];
    case 'accepted':
      return [...leftFaults(finding, entry.reviewOn, ground), ...limitFaults(limitOf(finding, ground), '/step')];
    case 'found':
    case 'owner_answered':
    case 'proposed':
    case 'planned':
    case 'begun':
    case 'sent_back':
    case 'entered_in_error':
    case 'reopened':
    case 'merged_into':
    case 'took_in':
    case 'split_off':
    case 'split_from':
      return [];
  }
}

/** The most urgent is let down only by a surveyor who has looked again; of the others a reason is asked. */
function loweringFaults({ urgency }: Finding, said: UrgencySaid | null, bySurveyor: boolean): StepFault[] {
  const isLowered = said !== null && isMoreUrgent(urgency, said.urgency);
  return isLowered && urgency === 'before_use' && !bySurveyor
    ? [fault('/urgency', 'what must be dealt with before use is let down only by a surveyor who has looked again')]
    : [];
}

function reasonFaults(finding: Finding, { said, reason }: Entry & { step: 'amended' }): StepFault[] {
  return said !== null && reason === null && isLetDown(finding, said)
    ? [fault('/reason', 'is needed to let the urgency down, or to name a later day')]
    : [];
}

function isLetDown({ urgency, urgentBy }: Finding, said: UrgencySaid): boolean {
  return (
    isMoreUrgent(urgency, said.urgency) || (urgentBy !== null && said.urgentBy !== null && said.urgentBy > urgentBy)
  );
}

/** Seen gone ends a finding, so it asks for what verification asks for. */
function goneFaults(finding: Finding, entry: Entry & { step: 'seen' }, ground: Ground): StepFault[] {
  if (entry.seen !== 'gone' || finding.remedy.state === 'verified') return [];
  const maySay = ['owner', 'manager', 'surveyor'].includes(ground.role);
  return [
    ...(maySay ? [] : [fault('/seen', 'is said by an owner, a manager or a surveyor')]),
    ...evidenceFaults(entry.evidence),
    ...samePairOfEyes(finding, entry, '/seen'),
  ];
}

function verifyFaults(
  finding: Finding,
  entry: Entry & { step: 'verified' },
  { secondPairOfEyes }: Ground,
): StepFault[] {
  return [...evidenceFaults(entry.evidence), ...(secondPairOfEyes ? samePairOfEyes(finding, entry, '/right') : [])];
}

const evidenceFaults = (evidence: readonly Evidence[]): StepFault[] =>
  evidence.length > 0 ? [] : [fault('/evidence', 'is needed: what shows that it is right')];

export const isSamePair = ({ remedy }: Finding, by: string): boolean =>
  remedy.state === 'reported_done' && !remedy.byAnother && remedy.reportedBy === by;

function samePairOfEyes(finding: Finding, { by }: Entry, pointer: string): StepFault[] {
  return isSamePair(finding, by) ? [fault(pointer, 'is for somebody other than whoever did the work')] : [];
}

function doneFaults({ firstSeenOn }: Finding, doneOn: IsoDay, { today }: Ground): StepFault[] {
  if (doneOn > today) return [fault('/doneOn', 'lies in the future')];
  return doneOn < firstSeenOn ? [fault('/doneOn', `lies before ${firstSeenOn}, when it was found`)] : [];
}

function leftFaults({ urgency }: Finding, reviewOn: IsoDay, { today, reviewBy }: Ground): StepFault[] {
  return [
    ...(urgency === 'before_use'
      ? [fault('/step', 'what must be dealt with before use can neither wait nor be accepted')]
      : []),
    ...(reviewOn <= today ? [fault('/reviewOn', 'must lie ahead')] : []),
    ...(reviewOn > reviewBy
      ? [fault('/reviewOn', `must be ${reviewBy} or earlier: nothing is put off for longer`)]
      : []),
  ];
}

/** The earlier of what was written with it and what its rule asks anyway. */
function limitOf({ limit }: Finding, { ruleLimit }: Ground): RemedialLimit | null {
  if (limit === null || ruleLimit === null) return limit ?? ruleLimit;
  return ruleLimit.on < limit.on ? ruleLimit : limit;
}

function deferralFaults(limit: RemedialLimit | null, { until, reviewOn }: Entry & { step: 'deferred' }): StepFault[] {
  return [
    ...(reviewOn > until ? [fault('/reviewOn', 'must not lie after the day it is put off until')] : []),
    ...(limit && until > limit.on ? [fault('/until', `lies after ${limit.on}: ${limit.source}`)] : []),
  ];
}

/** What a rule sets a day for is done by that day, and not agreed to as it is. */
const limitFaults = (limit: RemedialLimit | null, pointer: string): StepFault[] =>
  limit ? [fault(pointer, `cannot be accepted: it must be put right by ${limit.on}: ${limit.source}`)] : [];

const fault = (pointer: string, detail: string): StepFault => ({ pointer, detail });
