/** Short ways to write a notice, a plate and an answer in tests. */
import { day } from '../item/facts.test-support.ts';
import type { NoticeAnswer } from './answer.ts';
import type { SafetyNotice } from './notice.ts';
import type { Plate, PlateHistory } from './plate.ts';

/** An invented maker's notice about gas hoses AB1200 to AB1399, to be replaced by the end of April. */
export function notice(more: Partial<SafetyNotice> = {}): SafetyNotice {
  return {
    id: 'n1',
    title: 'Hoses that may come off the tail',
    publisher: 'Quillmere Hose Works',
    reference: 'QH-2026-03',
    issuedOn: day('2026-03-03'),
    address: null,
    document: 'Letter to owners, 3 March 2026',
    kinds: ['gas_hose'],
    makers: ['Quillmere Hose Works'],
    models: [],
    serials: [{ from: 'AB1200', to: 'AB1399' }],
    manufactured: null,
    hazard: 'gas can escape below',
    action: { kind: 'replace', words: 'Have the hose replaced by a gas engineer' },
    deadline: { kind: 'on', on: day('2026-04-30') },
    weight: 'maker',
    recordedAt: '2026-03-10T09:00:00Z',
    withdrawn: null,
    ...more,
  };
}

export function plate(more: Partial<Plate> = {}): Plate {
  return { maker: 'Quillmere Hose Works', model: null, serialNumber: 'AB1250', quantity: 1, ...more };
}

/** On the list since 2020, never written over. */
export function plates(current: Plate, more: Partial<PlateHistory> = {}): PlateHistory {
  return { current, addedAt: '2020-01-01T00:00:00Z', former: [], ...more };
}

export function answer(more: Partial<NoticeAnswer> = {}): NoticeAnswer {
  return {
    id: 'a1',
    answer: 'done',
    on: day('2026-04-02'),
    doneBy: { name: 'Ines Vale', capacity: 'gas_engineer' },
    evidence: 'certificate',
    reference: 'W-118',
    note: null,
    until: null,
    serialRead: null,
    serialThen: 'AB1250',
    recordedAt: '2026-04-03T10:00:00Z',
    corrects: null,
    ...more,
  };
}
