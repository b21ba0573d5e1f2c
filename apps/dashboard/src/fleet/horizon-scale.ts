/** The horizon's time axis: days to pixels, and the chart's scale bar of months. Pure; pixels from the left edge. */
import { addMonths, dayFromNumber, dayNumber, daysBetween } from '../ui/calendar.ts';

export type Scale = {
  readonly from: string;
  readonly to: string;
  readonly width: number;
  /** Where a day lies; outside 0…width when the day is off the axis. */
  readonly x: (day: string) => number;
};

export function horizonScale(from: string, months: number, width: number): Scale {
  const to = addMonths(from, months);
  const days = daysBetween(from, to);
  return { from, to, width, x: (day) => (daysBetween(from, day) / days) * width };
}

/** One block of the scale bar: a calendar month, or the part of it that is on the axis. */
export type MonthBlock = {
  readonly month: string;
  readonly left: number;
  readonly width: number;
  readonly dark: boolean;
  /** Set on the first month of a year and on nothing else. */
  readonly year?: string;
};

export function monthBlocks(scale: Scale): MonthBlock[] {
  const starts = monthStarts(scale.from, scale.to);
  return starts.map((start, index) => {
    const left = Math.max(0, scale.x(start));
    const right = Math.min(scale.width, scale.x(addMonths(start, 1)));
    const block = { month: start.slice(0, 7), left, width: right - left, dark: index % 2 === 1 };
    return start.endsWith('-01-01') && scale.x(start) > 0 ? { ...block, year: start.slice(0, 4) } : block;
  });
}

function monthStarts(from: string, to: string): string[] {
  const starts: string[] = [];
  for (let start = `${from.slice(0, 7)}-01`; start < to; start = addMonths(start, 1)) starts.push(start);
  return starts;
}

/** A span of days cut to the axis; `null` when no part of it shows. An open end runs to the edge. */
export function spanOnAxis(scale: Scale, from: string, to: string | null): { left: number; width: number } | null {
  const left = Math.max(0, scale.x(from));
  const right = Math.min(scale.width, to === null ? scale.width : scale.x(to));
  return right > left ? { left, width: right - left } : null;
}

/** How many things fall in each week from the left edge; the last, cut week counts as one. */
export function weeklyCrowding(scale: Scale, days: readonly { on: string; count: number }[]): number[] {
  const weeks = new Array<number>(Math.ceil(daysBetween(scale.from, scale.to) / 7)).fill(0);
  for (const { on, count } of days) {
    const week = Math.floor(daysBetween(scale.from, on) / 7);
    if (week in weeks) weeks[week] = (weeks[week] ?? 0) + count;
  }
  return weeks;
}

/** How far the horizon can be drawn. */
export const ZOOMS = [24, 12, 6, 3] as const;
export type Zoom = (typeof ZOOMS)[number];

/** Two years on a desk, one on a tablet, six months on a phone: about as much as can be told apart. */
export function monthsThatFit(width: number): Zoom {
  if (width < 380) return 6;
  return width < 520 ? 12 : 24;
}

/** A season on the axis, named by the year in which it begins. */
export type SeasonBand = { readonly year: string; readonly left: number; readonly width: number };

/** `from` and `to` are `MM-DD`, both in the season; it may run over the turn of the year. */
export function seasonBands(scale: Scale, season: { from: string; to: string } | null): SeasonBand[] {
  if (!season) return [];
  const first = Number(scale.from.slice(0, 4)) - 1;
  const last = Number(scale.to.slice(0, 4));
  const years = Array.from({ length: last - first + 1 }, (_, index) => first + index);
  return years.flatMap((year) => {
    const ends = season.to < season.from ? year + 1 : year;
    const span = spanOnAxis(scale, `${year}-${season.from}`, dayAfter(`${ends}-${season.to}`));
    return span ? [{ year: String(year), ...span }] : [];
  });
}

const dayAfter = (day: string) => dayFromNumber(dayNumber(day) + 1);
