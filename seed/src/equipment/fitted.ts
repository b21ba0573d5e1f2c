/** The facts of a thing that is fitted, lives so many months and is replaced. */
import type { Day } from '@garboard/domain/calendar/day.ts';
import { addDays } from '@garboard/domain/calendar/day.ts';
import type { DoneBy } from '@garboard/domain/item/fact.ts';
import { fittings, type Lot } from '../history.ts';
import type { FactPlan } from '../plan.ts';
import { act, certified, dateText, type Precision, plate, plateOfNew } from '../record.ts';

type Life = { readonly months: number; readonly by: DoneBy; readonly print?: 'sometimes' | 'usually' };
export type Fitted = { readonly facts: readonly FactPlan[]; readonly since: Day };

/** `print`: how often a month of manufacture can be read on it. `since`: when the one aboard now was fitted. */
export function fitted(lot: Lot, { months, by, print }: Life): Fitted {
  const [first, ...later] = fittings(lot, months);
  const since = later.at(-1) ?? first;
  if (lot.fortune === 'unknown') return { facts: [], since };
  const facts = [asBuilt(lot, first), ...later.map((day) => renewal(lot, day, by))];
  return { facts: isLegible(lot, print) ? [...facts, madeMark(lot, since, facts.at(-1))] : facts, since };
}

/** Where a print is read only sometimes it does not decide: what is late or due soon is so by its fitting. */
function isLegible({ random, fortune }: Lot, print: Life['print']): boolean {
  if (print === 'usually') return random.chance(0.85);
  return print === 'sometimes' && fortune === 'in_date' && random.chance(0.5);
}

/** Known from the builder's file, and seldom to the day. */
function asBuilt({ log, random }: Lot, day: Day): FactPlan {
  const on = dateText(day, random.pick<Precision>(['month', 'month', 'year']));
  return act(log, 'installed', day, { on, evidence: random.pick(['record', 'owner_statement']) });
}

/** Before the register was kept, an invoice often says no more than the month. */
function renewal({ log, random }: Lot, day: Day, by: DoneBy): FactPlan {
  if (day >= log.enteredOn) return act(log, 'replaced', day, certified(by, day));
  const vague = random.chance(0.3) ? { on: dateText(day, 'month') } : { doneBy: by };
  return act(log, 'replaced', day, {
    ...vague,
    evidence: random.pick(['record', 'record', 'certificate', 'owner_statement']),
  });
}

/** Made some weeks before it was fitted. */
function madeMark({ log, random }: Lot, since: Day, fitting: FactPlan | undefined): FactPlan {
  const month = dateText(addDays(since, -random.between(20, 100)), 'month');
  return fitting && since >= log.enteredOn
    ? plateOfNew(fitting, 'manufactured', month)
    : plate('manufactured', month, log.enteredOn);
}
