/** Which date the own figure is for. Anything else in the address is left aside. */
import { text } from '../due-list/due-search.ts';

export type FigureSearch = { item?: string | undefined; rule?: string | undefined; duty?: string | undefined };

export function readFigureSearch(raw: Record<string, unknown>): FigureSearch {
  const [item, rule, duty] = [text(raw.item), text(raw.rule), text(raw.duty)];
  return { ...(item && { item }), ...(rule && { rule }), ...(duty && { duty }) };
}
