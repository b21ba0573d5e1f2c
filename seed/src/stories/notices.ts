/** Makers' notices that reached the office, in different states. Makers and faults are invented. */
import type { AnswerInput } from '@garboard/actions/safety-notice/answered-item.ts';
import type { NoticeInput } from '@garboard/actions/safety-notice/notice-input.ts';
import { addDays, addMonths, type Day, formatDay } from '@garboard/domain/calendar/day.ts';
import { dayInWords } from '@garboard/domain/calendar/words.ts';
import { EXTINGUISHER_MAKER, HOSE_MAKER } from '../equipment/plates.ts';
import type { People } from '../logbook.ts';
import type { NoticePlan } from '../plan.ts';

/** Hoses that were crimped badly: some done, one put off, the rest still open. */
export function hosesBadlyCrimped(today: Day, { gasEngineer, keeper }: People): NoticePlan {
  const issuedOn = addDays(today, -34);
  return {
    notice: {
      ...letter(HOSE_MAKER, issuedOn),
      title: 'Gas hoses with a crimp that can let go',
      reference: 'QH-S 14',
      kinds: ['gas_hose'],
      makers: [HOSE_MAKER],
      serials: [{ from: 'QH 1200', to: 'QH 1399' }],
      hazard: 'the hose can come off its tail and let gas into the boat',
      action: { kind: 'replace', words: 'Shut the cylinder and have the hose replaced by a gas engineer' },
      deadline: { kind: 'on', on: formatDay(addDays(today, 40)) },
    },
    enteredOn: addDays(today, -30),
    answers: [
      { ...answered(addDays(today, -12), gasEngineer), evidence: 'certificate', reference: 'Q-204' },
      null,
      {
        ...answered(addDays(today, -10), keeper),
        answer: 'deferred',
        evidence: null,
        until: formatDay(addDays(today, 25)),
        note: 'The cylinder is ashore and the boat is shut up until then.',
      },
      null,
    ],
  };
}

/** Extinguishers of one year: every one was looked at. */
export function extinguishersChecked(today: Day, { fireTechnician }: People): NoticePlan {
  const issuedOn = addDays(today, -140);
  return {
    notice: {
      ...letter(EXTINGUISHER_MAKER, issuedOn),
      title: 'Powder extinguishers with a stiff safety pin',
      reference: 'EFA 2-b',
      kinds: ['portable_extinguisher_dry_powder'],
      makers: [EXTINGUISHER_MAKER],
      manufactured: { from: formatDay(addMonths(today, -144)), to: null },
      hazard: 'the pin may not come out in a fire',
      action: { kind: 'inspect', words: 'Draw the pin and put it back: a fire-equipment technician’s job' },
      deadline: { kind: 'days_after_issue', days: 60 },
    },
    enteredOn: addDays(today, -136),
    answers: [
      { ...answered(addDays(today, -100), fireTechnician), evidence: 'stamped', reference: 'round of the year' },
    ],
  };
}

/** Taken back by its maker after a fortnight. */
export function raftsTakenBack(today: Day): NoticePlan {
  const issuedOn = addDays(today, -75);
  return {
    notice: {
      ...letter('Halcyon Raft Makers', issuedOn),
      title: 'Rafts that may have been packed without a knife',
      reference: null,
      kinds: ['liferaft'],
      serials: [{ from: 'R400000', to: 'R699999' }],
      hazard: 'the painter cannot be cut',
      action: { kind: 'return', words: 'Send the raft to an approved service station' },
      deadline: { kind: 'before_next_use' },
      weight: 'law',
    },
    enteredOn: addDays(today, -74),
    answers: [null],
    withdrawn: { on: addDays(today, -60), reason: 'Taken back by its publisher: the knives were found.' },
  };
}

function letter(publisher: string, issuedOn: Day) {
  const nothing = { makers: [], models: [], serials: [], manufactured: null, address: null, weight: 'maker' as const };
  const document = `Letter to owners, ${dayInWords(issuedOn)}`;
  return { ...nothing, publisher, issuedOn: formatDay(issuedOn), document } satisfies Partial<NoticeInput>;
}

function answered(on: Day, doneBy: AnswerInput['doneBy']): AnswerInput {
  const nothing = { note: null, until: null, serialRead: null, reference: null, corrects: null };
  return { ...nothing, answer: 'done', on: formatDay(on), doneBy, evidence: null, replaced: false };
}
