/** Limits on an anniversary: the counting of days is that of `anniversaries.ts`, the surveys come from the columns. */
import { type Day, daysBetween } from '../../calendar/day.ts';
import { type Anniversary, anniversaryOf, nextUnanswered } from '../../item/anniversaries.ts';
import type { AnniversaryWindow } from '../certificate-terms.ts';
import type { Limit } from '../rule.ts';
import type { Aboard } from './aboard.ts';
import { attributeCode, NO_DAY, NOT_OWED } from './codes.ts';
import { compileCertificate, type InForce } from './compile-certificate.ts';
import type { NumberValue } from './compile-condition.ts';
import { doesCount } from './resets.ts';

type Of<Kind extends Limit['kind']> = Extract<Limit, { kind: Kind }>;
type LimitDay = (aboard: Aboard) => number;

export function anniversaryDay(limit: Of<'anniversary'>, number: NumberValue): LimitDay {
  const plan = compileCertificate(limit.terms, number);
  const endorsed = limit.endorsed === undefined ? null : attributeCode(limit.endorsed);
  return (aboard) => {
    const stands = endorsed === null ? NO_DAY : (aboard.dateFirst[endorsed] as number);
    if (stands !== NO_DAY) return falls(nextOfGiven(stands, limit.window, aboard), aboard);
    const certificate = plan.inForce(aboard);
    if (certificate.begins === NO_DAY) return NO_DAY;
    const { at, last } = anniversariesOf(certificate, limit);
    const { next } = nextUnanswered(at, 1, plan.during(certificate, aboard).map(asAct));
    return falls(next <= last ? at(next) : anniversaryOf(certificate.expires as Day, 1, limit.window), aboard);
  };
}

export function oneOfDay(limit: Of<'one_of_anniversaries'>, number: NumberValue): LimitDay {
  const plan = compileCertificate(limit.terms, number);
  return (aboard) => {
    const certificate = plan.inForce(aboard);
    const { begins, expires } = certificate;
    if (begins === NO_DAY || expires === NO_DAY) return NO_DAY;
    const { at, last } = anniversariesOf(certificate, { of: 'expiry', window: limit.window });
    const numbers = limit.numbers.filter((each) => each <= last);
    const [first] = numbers;
    if (first === undefined) return NOT_OWED;
    const isDone = plan.during(certificate, aboard).some((day) => day >= at(first).countsFrom);
    const theirs = isDone
      ? limit.numbers.map((each) => anniversaryOf(expires as Day, each, limit.window))
      : numbers.map(at);
    return fallsLast(theirs, aboard);
  };
}

export function givenAnniversaryDay({ attribute, window }: Of<'given_anniversary'>): LimitDay {
  const given = attributeCode(attribute);
  return (aboard) => {
    const base = aboard.dateFirst[given] as number;
    return base === NO_DAY ? NO_DAY : falls(nextOfGiven(base, window, aboard), aboard);
  };
}

const asAct = (day: number) => ({ day: day as Day });

/** The next anniversary of a date that somebody gave: those long gone by are not asked for. */
function nextOfGiven(base: number, window: AnniversaryWindow, aboard: Aboard): Anniversary {
  const at = (each: number) => anniversaryOf(base as Day, each, window);
  const since = at(-1).window.closes;
  const { day } = aboard.columns.facts;
  const acts = Array.from(aboard.rows.subarray(0, aboard.count))
    .filter((row) => doesCount(aboard.resets, aboard, row) && (day[row] as number) > since)
    .map((row) => asAct(day[row] as number));
  return at(nextUnanswered(at, 0, acts).next);
}

/** Its anniversaries by their number, and the number of the last one before it expires. */
function anniversariesOf({ begins, expires }: InForce, { of, window }: Pick<Of<'anniversary'>, 'of' | 'window'>) {
  const years =
    expires === NO_DAY ? null : Math.max(1, Math.round(daysBetween(begins as Day, expires as Day) / 365.25));
  const at =
    of === 'expiry' && years !== null
      ? (each: number) => anniversaryOf(expires as Day, each - years, window)
      : (each: number) => anniversaryOf(begins as Day, each, window);
  return { at, last: years === null ? Number.POSITIVE_INFINITY : years - 1 };
}

function falls(anniversary: Anniversary, aboard: Aboard): number {
  return fallsLast([anniversary], aboard);
}

/** The last of them; all their windows are kept. */
function fallsLast(anniversaries: readonly Anniversary[], { opens, closes }: Aboard): number {
  opens.length = 0;
  closes.length = 0;
  for (const { window } of anniversaries) {
    opens.push(window.opens);
    closes.push(window.closes);
  }
  return Math.max(...anniversaries.map(({ on }) => on));
}
