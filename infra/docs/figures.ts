/** Figures as the code has them and as docs/sources.md says them, made comparable: months, days and hours. */
import { parsePeriod } from '@garboard/domain/calendar/period.ts';
import type { Rule } from '@garboard/domain/rule/rule.ts';

/** Every figure in the data of a rule: its periods, its hours and its bounds; each once. */
export function figuresOfRule({ duties, checks, appliesWhen = [] }: Rule): readonly string[] {
  return [...new Set(figuresIn([duties, checks, appliesWhen]))];
}

function figuresIn(data: unknown): readonly string[] {
  if (typeof data === 'string') return figuresOfPeriod(data);
  if (typeof data !== 'object' || data === null) return [];
  return Object.entries(data).flatMap(([name, value]) =>
    typeof value === 'number' ? figureOfNumber(name, value) : figuresIn(value),
  );
}

function figuresOfPeriod(text: string): readonly string[] {
  const period = parsePeriod(text);
  if (!period) return [];
  return [
    ...(period.months === 0 ? [] : [figure(period.months, 'month')]),
    ...(period.days === 0 ? [] : [figure(period.days, 'day')]),
  ];
}

/** Hours where nobody gave their own; a bound that an attribute lies below, which is in months. */
function figureOfNumber(name: string, value: number): readonly string[] {
  if (name === 'otherwise') return [figure(value, 'hour')];
  return name === 'below' ? [figure(value, 'month')] : [];
}

/**
 * Every figure that a text can be read to say: a number with the unit after it, and with the one before it,
 * as in "12 months; 17 with permission" and "suspect at 10, out at 20 years".
 */
export function figuresSaid(text: string): ReadonlySet<string> {
  const words = [...text.matchAll(/(\d+)|\b(year|month|week|day|hour)(?:s|ly)?\b/g)];
  const said = new Set<string>();
  for (const [at, [, number]] of words.entries()) {
    if (number === undefined) continue;
    const before = words.slice(0, at).findLast(([, , unit]) => unit)?.[2];
    const after = words.slice(at).find(([, , unit]) => unit)?.[2];
    for (const unit of [before, after]) if (unit) said.add(inSmallerUnit(Number(number), unit));
  }
  return said;
}

function inSmallerUnit(count: number, unit: string): string {
  if (unit === 'year') return figure(count * 12, 'month');
  return unit === 'week' ? figure(count * 7, 'day') : figure(count, unit);
}

function figure(count: number, unit: string): string {
  return `${count} ${unit}s`;
}

/** Constants whose name says that they are so many days, months, years or hours, in the code of one file. */
export function figuresInCode(code: string): readonly { readonly name: string; readonly figure: string }[] {
  return [...code.matchAll(/\bconst ([A-Z][A-Z0-9_]*) = ([\d_ *]+);/g)].flatMap(([, name = '', value = '']) => {
    const unit = /(?:^|_)(DAY|MONTH|YEAR|HOUR)S(?:_|$)/.exec(name)?.[1]?.toLowerCase();
    return unit ? [{ name, figure: inSmallerUnit(productOf(value), unit) }] : [];
  });
}

function productOf(text: string): number {
  return text.split('*').reduce((product, factor) => product * Number(factor.replaceAll('_', '')), 1);
}
