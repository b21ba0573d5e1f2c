/** Running hours: the readings are taken from the columns, the projection is that of the explaining engine. */
import type { Day } from '../../calendar/day.ts';
import { type MeterReading, projectHours, withReading } from '../../item/running-hours.ts';
import type { Limit } from '../rule.ts';
import type { Aboard } from './aboard.ts';
import { attributeCode, factCode, NO_DAY, NONE, PASSED } from './codes.ts';

const METER = factCode('meter');

type RunningHours = Extract<Limit, { kind: 'running_hours' }>;

export function runningHoursDay(limit: RunningHours): (aboard: Aboard) => number {
  const figure = figureOf(limit);
  return (aboard) => {
    const hours = figure(aboard);
    if (hours === 0 || aboard.last === NONE) return NO_DAY;
    const since = aboard.columns.facts.day[aboard.last] as Day;
    const projection = projectHours(readingsAboard(aboard), since, hours);
    return projection.kind === 'reached' ? projection.on : NO_DAY;
  };
}

/** How many hours; nought where nobody says. */
function figureOf(limit: RunningHours): (aboard: Aboard) => number {
  if ('hours' in limit) return () => limit.hours;
  const { attribute, otherwise = 0 } = limit;
  const at = attributeCode(attribute);
  return ({ whole }) => (whole[at] as number) || otherwise;
}

function readingsAboard({ rows, count, columns }: Aboard): readonly MeterReading[] {
  const { fact, outcome, first, hours } = columns.facts;
  const readings: MeterReading[] = [];
  for (let at = 0; at < count; at++) {
    const row = rows[at] as number;
    const value = hours[row] as number;
    if (fact[row] === METER && outcome[row] === PASSED && !Number.isNaN(value))
      withReading(readings, { day: first[row] as Day, hours: value, factId: '' });
  }
  return readings;
}
