/** Reads a length of time as people write it: `7 days`, `3 months`, `1 year`, `P42M`. */

const UNITS: Record<string, string> = { day: 'D', week: 'W', month: 'M', year: 'Y' };

/** ISO 8601, in the unit it was written in; `null` where it is none. */
export function readPeriod(typed: string): string | null {
  const text = typed.trim();
  if (/^P(?=\d)(\d+Y)?(\d+M)?(\d+W)?(\d+D)?$/i.test(text)) return text.toUpperCase();
  const [, count, unit] = /^(\d{1,5})\s*(day|week|month|year)s?$/i.exec(text) ?? [];
  return count && unit ? `P${count}${UNITS[unit.toLowerCase()]}` : null;
}

/** As somebody would type it again: `P7D` is "7 days". */
export function periodToType(period: string): string {
  const [, count, letter] = /^P(\d+)([DWMY])$/.exec(period) ?? [];
  const unit = Object.keys(UNITS).find((each) => UNITS[each] === letter);
  return count && unit ? `${count} ${unit}${count === '1' ? '' : 's'}` : period;
}
