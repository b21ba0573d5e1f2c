/** Hoses and wires whose record is odd. */
import { addDays, addMonths } from '@garboard/domain/calendar/day.ts';
import { thing } from '../equipment/thing.ts';
import type { Logbook } from '../logbook.ts';
import type { ItemPlan } from '../plan.ts';
import { act, certified, dateText, plate, plateOfNew } from '../record.ts';

/** Five years are up in less than three weeks. */
export function aboutToBeDue(log: Logbook, label: string): ItemPlan {
  const fittedOn = addMonths(addDays(log.today, 18), -60);
  return thing('gas_hose', label, [
    act(log, 'replaced', fittedOn, { doneBy: log.people.gasEngineer, evidence: 'certificate' }),
  ]);
}

/** A new hose, fitted by somebody who is no gas engineer. */
export function fittedByTheOwner(log: Logbook, label: string): ItemPlan {
  const fittedOn = addMonths(log.today, -9);
  const doneBy = { name: 'the owner', capacity: 'owner_or_skipper' } as const;
  return thing('gas_hose', label, [
    act(log, 'replaced', fittedOn, { on: dateText(fittedOn, 'month'), doneBy, evidence: 'owner_statement' }),
  ]);
}

/** The print on the hose and the sticker beside it do not agree. */
export function twoPrints(log: Logbook, label: string): ItemPlan {
  const printed = (months: number) => dateText(addMonths(log.today, -months), 'month');
  return thing('gas_hose', label, [
    plate('manufactured', printed(34), log.enteredOn),
    plate('manufactured', printed(46), log.enteredOn, { evidence: 'unknown', note: 'On a sticker at the cooker end.' }),
  ]);
}

/** The replace-by date printed on it comes before five years from fitting. */
export function printedEarlier(log: Logbook, label: string): ItemPlan {
  const fittedOn = addMonths(log.careOn, -12);
  const replaced = act(log, 'replaced', fittedOn, certified(log.people.gasEngineer, fittedOn));
  return thing('gas_hose', label, [
    replaced,
    plateOfNew(replaced, 'printed_expiry', dateText(addMonths(fittedOn, 38), 'month')),
  ]);
}

/** No date at all, though somebody has looked. */
export function undatedRig(log: Logbook, label: string): ItemPlan {
  const look = act(log, 'inspected', log.careOn, { test: 'visual', doneBy: log.people.keeper });
  return thing('standing_rigging_wire', label, [look]);
}

/** The rigger did not get to the masthead, so the two years run on from the time before. */
export function partlyInspected(log: Logbook, label: string): ItemPlan {
  const fittedOn = addMonths(log.today, -94);
  const earlierOn = addMonths(log.today, -31);
  const latelyOn = addMonths(log.today, -7);
  const partly = { outcome: 'partly', note: 'Wind too strong to go to the masthead.' } as const;
  return thing('standing_rigging_wire', label, [
    act(log, 'installed', fittedOn, { on: dateText(fittedOn, 'year'), evidence: 'owner_statement' }),
    act(log, 'inspected', earlierOn, certified(log.people.rigger, earlierOn)),
    act(log, 'inspected', latelyOn, { ...certified(log.people.rigger, latelyOn), ...partly }),
    act(log, 'inspected', log.careOn, { test: 'visual', doneBy: log.people.keeper }),
  ]);
}
