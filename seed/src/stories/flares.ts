/** Flares at the edge of what is printed on them. */
import { addMonths, type Day } from '@garboard/domain/calendar/day.ts';
import { thing } from '../equipment/thing.ts';
import { type Logbook, learnedFrom } from '../logbook.ts';
import type { ItemPlan } from '../plan.ts';
import { dateText, plate } from '../record.ts';

/** Out of date since the last day of last month. */
export function justExpired(log: Logbook, label: string, quantity: number): ItemPlan {
  return printed(log, label, quantity, { made: addMonths(log.today, -37), expires: addMonths(log.today, -1) });
}

/** Four years on the case, where an approved flare has three and a half at the most. */
export function stampedTooLate(log: Logbook, label: string, quantity: number): ItemPlan {
  return printed(log, label, quantity, { made: addMonths(log.today, -33), expires: addMonths(log.today, 15) });
}

type Marks = { readonly made: Day; readonly expires: Day };

function printed(log: Logbook, label: string, quantity: number, { made, expires }: Marks): ItemPlan {
  const readOn = learnedFrom(log, made);
  const facts = [
    plate('manufactured', dateText(made, 'month'), readOn),
    plate('printed_expiry', dateText(expires, 'month'), readOn),
  ];
  return thing('hand_flare', label, facts, { quantity });
}
