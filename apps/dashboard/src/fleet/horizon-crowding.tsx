import { strings } from '../strings/fleet.ts';
import { dayFromNumber, dayNumber, formatDay } from '../ui/calendar.ts';
import type { FleetRow } from './fleet.query.ts';
import { type Scale, weeklyCrowding } from './horizon-scale.ts';

const HEIGHT = 34;

/** The whole fleet's weeks, so that a crowded one is seen before it comes. */
export function HorizonCrowding({ rows, scale }: { rows: readonly FleetRow[]; scale: Scale }) {
  const days = rows.flatMap((row) => row.marks.map((mark) => ({ on: mark.on, count: mark.things.length })));
  const weeks = weeklyCrowding(scale, days);
  const most = Math.max(...weeks);
  const wide = scale.width / (weeks.length || 1);
  return (
    <div className="horizon-line horizon-crowding">
      <p className="horizon-about">
        {strings.crowding}. {most > 0 && strings.mostCrowded(most, firstDay(scale, weeks.indexOf(most)))}
      </p>
      <svg viewBox={`0 0 ${scale.width} ${HEIGHT}`} preserveAspectRatio="none" aria-hidden="true">
        {weeks.map((count, week) => {
          const high = most === 0 ? 0 : (count / most) * (HEIGHT - 2);
          // biome-ignore lint/suspicious/noArrayIndexKey: the index is the week
          return <rect key={week} x={week * wide + wide * 0.15} y={HEIGHT - high} width={wide * 0.7} height={high} />;
        })}
      </svg>
    </div>
  );
}

const firstDay = (scale: Scale, week: number) => formatDay(dayFromNumber(dayNumber(scale.from) + 7 * week));
