/** What a rule does while something that it reads is not on record, or only roughly: in full sentences. */
import { ATTRIBUTES } from '../item/attribute.ts';
import { eventInWords, planOfEvent } from '../item/words.ts';
import type { VesselEventKind } from '../vessel/situation.ts';
import type { Duty, Limit, Rule } from './rule.ts';
import { ruleReads } from './rule-reads.ts';

export function whileNotRecorded(rule: Rule): readonly string[] {
  const limits = rule.duties.flatMap(everyLimit);
  return [
    ...rough(rule, limits),
    ...(rule.duties.some(({ resets }) => resets.some(({ by }) => by.length > 0)) ? [WHO] : []),
    ...(limits.some(isByCondition) ? [CONDITIONS] : []),
    ...(limits.some(({ kind }) => kind === 'running_hours') ? [HOURS] : []),
    ...(ruleReads(rule).attributes.includes('expiryLessOneDay') ? [LESS_ONE_DAY] : []),
    ...ruleReads(rule).events.filter(isAwaited(rule)).map(planned),
    ...(rule.duties.some(({ extension }) => extension !== undefined) ? [EXTENSION] : []),
  ];
}

const WHO =
  'Where it is not said in what capacity somebody acted, the act counts, and the assumption is told; one in a capacity that is not asked for does not count.';
const CONDITIONS = 'A condition that is not on record does not hold, so the shorter interval counts, and that is told.';
const HOURS = 'From fewer than two readings of the meter no day is worked out by running hours.';
const LESS_ONE_DAY = `While it is not on record, it is taken to be so: ${ATTRIBUTES.expiryLessOneDay.words}. Printed on the certificate, the expiry goes before.`;
const EXTENSION =
  'A permission to be late counts only while it is on record as an extension, with the last day that it covers; without one, only how far it could go is told.';

function rough(rule: Rule, limits: readonly Limit[]): readonly string[] {
  const { facts } = ruleReads(rule);
  const whole = limits.some((limit) => limit.kind === 'after' && /whole/.test(limit.counting ?? ''));
  return [
    ...(facts.includes('printed_expiry') ? ['A printed month means its last day, a printed year 31 December.'] : []),
    ...(facts.some((fact) => !NO_START.has(fact)) ? [whole ? ROUGH_BUT_WHOLE : ROUGH] : []),
  ];
}

const NO_START: ReadonlySet<string> = new Set(['printed_expiry', 'extended', 'meter', 'activated']);
const ROUGH = 'A date known only to the month or year counts from its first day, and that is told.';
const ROUGH_BUT_WHOLE =
  'A date known only to the month or year counts from its first day, and that is told; where the rule counts in whole months or years, to the end of the one it leads to.';

/** Those that are planned ahead, not those that befall her. */
function isAwaited({ duties }: Rule): (event: VesselEventKind) => boolean {
  const awaited = new Set(
    duties.flatMap((duty) => [
      ...everyLimit(duty).flatMap((limit) => ('event' in limit ? [limit.event] : [])),
      ...(duty.replaceBy ? [duty.replaceBy.event] : []),
      ...(duty.extension?.kind === 'next_event' ? [duty.extension.event] : []),
    ]),
  );
  return (event) => awaited.has(event);
}

function planned(event: VesselEventKind): string {
  return `The next ${eventInWords(event)} is known only while one is stated as planned (${planOfEvent(event)}); one that was held is stated as not planned.`;
}

function isByCondition(limit: Limit): boolean {
  return limit.kind === 'after' && limit.plus.kind === 'by_condition';
}

function everyLimit({ limits, cappedBy = [], noLaterThan = [], fallback = [] }: Duty): readonly Limit[] {
  return [...limits, ...cappedBy, ...noLaterThan, ...fallback];
}
