/** Liferafts whose record is not a plain row of services. */
import { addDays, addMonths, formatDay } from '@garboard/domain/calendar/day.ts';
import { services } from '../equipment/liferaft.ts';
import { thing } from '../equipment/thing.ts';
import { type Logbook, learnedFrom } from '../logbook.ts';
import type { FactPlan, ItemPlan } from '../plan.ts';
import { act, certified, dateText, plateOfNew, stamp } from '../record.ts';

/** The old raft's plate and services, the day it was replaced, and the new raft's plate and service. */
export function replacedRaft(log: Logbook, label: string): ItemPlan {
  const newOn = addMonths(log.careOn, -12);
  const oldMadeOn = addMonths(newOn, -148);
  const old = services(log, [addMonths(newOn, -24), addMonths(newOn, -12)], oldMadeOn);
  const replaced = act(log, 'replaced', newOn, {
    ...certified(log.people.raftStation, newOn),
    note: 'The station would not pass the old raft at twelve years; a new one was packed and brought aboard.',
  });
  const madeOn = addDays(newOn, -60);
  const newPlate = plateOfNew(replaced, 'manufactured', dateText(madeOn, 'month'), { evidence: 'stamped' });
  const packed = services(log, [newOn], madeOn).map((fact) => ({ ...fact, learnedOn: replaced.learnedOn }));
  return raft(label, [
    stamp(log, oldMadeOn),
    ...old,
    replaced,
    newPlate,
    ...packed,
    ...services(log, [log.careOn], madeOn),
  ]);
}

export function failedService(log: Logbook, label: string): ItemPlan {
  const madeOn = addMonths(log.today, -100);
  const passed = services(
    log,
    [25, 13].map((months) => addDays(addMonths(log.today, -months), -8)),
    madeOn,
  );
  const failedOn = addDays(log.today, -20);
  const failed = act(log, 'serviced', failedOn, {
    ...certified(log.people.raftStation, failedOn),
    outcome: 'failed',
    note: 'A floor seam has lifted. The station keeps the raft until it is repaired.',
  });
  return raft(label, [stamp(log, madeOn), ...passed, failed]);
}

/** Looked after by somebody who may not: it resets nothing. */
export function servicedByTheYard(log: Logbook, label: string): ItemPlan {
  const madeOn = addMonths(log.today, -64);
  const station = services(log, [addMonths(log.today, -16)], madeOn);
  const repackedOn = addMonths(log.today, -4);
  const byTheYard = act(log, 'serviced', repackedOn, {
    doneBy: log.people.yard,
    note: 'Opened, dried and repacked in the loft.',
  });
  return raft(label, [stamp(log, madeOn), ...station, byTheYard]);
}

/** The twelve months are over; the authority's permission on record is not. */
export function extendedRaft(log: Logbook, label: string): ItemPlan {
  const madeOn = addMonths(log.today, -52);
  const lastOn = addDays(addMonths(log.today, -13), -10);
  const askedOn = addDays(log.today, -48);
  const extended = act(log, 'extended', askedOn, {
    ...certified({ ...log.people.surveyor, capacity: 'marine_inspector' }, askedOn),
    until: formatDay(addMonths(lastOn, 16)),
    note: 'No approved station within reach before she is launched.',
  });
  return raft(label, [stamp(log, madeOn), ...services(log, [lastOn], madeOn), extended]);
}

/** The wrong year was typed in. The correction strikes it out, and the raft turns out to be late. */
export function correctedService(log: Logbook, label: string): ItemPlan {
  const madeOn = addMonths(log.today, -44);
  const typedOn = addDays(log.today, -66);
  const reallyOn = addMonths(typedOn, -12);
  const wrong = act(log, 'serviced', typedOn, certified(log.people.raftStation, typedOn));
  const right: FactPlan = {
    ...act(log, 'serviced', reallyOn, certified(log.people.raftStation, reallyOn)),
    learnedOn: addDays(log.today, -41),
    note: 'The certificate came to hand: the year had been typed in wrong.',
    strikesOut: wrong,
  };
  return raft(label, [stamp(log, madeOn), wrong, right]);
}

/** Only the owner's word for it, and only the year. */
export function lostCertificate(log: Logbook, label: string): ItemPlan {
  const madeOn = addMonths(log.today, -88);
  const someDay = addMonths(log.today, -12);
  const said = act(log, 'serviced', someDay, {
    on: dateText(someDay, 'year'),
    evidence: 'owner_statement',
    learnedOn: learnedFrom(log, someDay),
    note: 'The owner says that it was done; the certificate is lost.',
  });
  return raft(label, [stamp(log, madeOn), said]);
}

function raft(label: string, facts: readonly FactPlan[]): ItemPlan {
  return thing('liferaft', label, facts, { attributes: { standard: 'solas' } });
}
