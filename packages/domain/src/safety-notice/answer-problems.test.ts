import { describe, expect, it } from 'vitest';
import { day } from '../item/facts.test-support.ts';
import { type AnswerEntered, type AnswerGround, answerProblems, whyNotAsked } from './answer-problems.ts';
import { noticeProblems } from './notice-problems.ts';
import { answer, notice } from './notices.test-support.ts';

const done: AnswerEntered = {
  answer: 'done',
  on: day('2026-04-02'),
  doneBy: { name: 'Ines Vale', capacity: 'gas_engineer' },
  evidence: 'certificate',
  note: null,
  until: null,
  serialRead: null,
  corrects: null,
  replaced: false,
};
const open = {
  kind: 'open',
  match: { kind: 'affected', because: [] },
  answers: [],
  unitSince: null,
  serialOfEarlier: null,
} as const;
const ground: AnswerGround = { notice: notice(), answers: [], standing: open, today: day('2026-04-10') };

function pointers(entered: Partial<AnswerEntered>, more: Partial<AnswerGround> = {}): string[] {
  return answerProblems({ ...done, ...entered }, { ...ground, ...more }).map(({ pointer }) => pointer);
}

describe('answerProblems', () => {
  it('finds none in what is done, in what was looked at, and in what is put off with a day and a reason', () => {
    expect(pointers({})).toEqual([]);
    expect(pointers({ answer: 'not_affected', serialRead: 'AB1400' })).toEqual([]);
    expect(pointers({ answer: 'deferred', until: day('2026-06-01'), note: 'no hose to be had' })).toEqual([]);
  });

  it('takes no day ahead, and none before the notice', () => {
    expect(pointers({ on: day('2026-04-11') })).toEqual(['/on']);
    expect(pointers({ on: day('2026-03-02') })).toEqual(['/on']);
  });

  it('asks who did it in what capacity, and what shows it', () => {
    expect(pointers({ doneBy: { name: 'Ines Vale' }, evidence: null })).toEqual(['/doneBy/capacity', '/evidence']);
  });

  it('asks for the number read, and does not take one that the notice names for unaffected', () => {
    expect(pointers({ answer: 'not_affected' })).toEqual(['/serialRead']);
    expect(pointers({ answer: 'not_affected', serialRead: 'AB1300' })).toEqual(['/serialRead']);
    const numberAlone = notice({ makers: [] });
    expect(pointers({ answer: 'not_affected', serialRead: 'AB1300', note: 'sure' }, { notice: numberAlone })).toEqual([
      '/serialRead',
    ]);
    expect(pointers({ answer: 'not_affected', serialRead: 'AB1300', note: 'a Tarnbeck hose' })).toEqual([]);
    expect(pointers({ answer: 'not_affected', serialRead: '1300' })).toEqual(['/note']);
    expect(pointers({ answer: 'not_affected' }, { notice: notice({ serials: [] }) })).toEqual(['/note']);
  });

  it('never puts off what is asked before the next use', () => {
    const asked = notice({ deadline: { kind: 'before_next_use' } });
    expect(pointers({ answer: 'deferred', until: day('2026-06-01'), note: 'away' }, { notice: asked })).toEqual([
      '/answer',
    ]);
  });

  it('puts nothing off without a day ahead and a reason', () => {
    expect(pointers({ answer: 'deferred' })).toEqual(['/until', '/note']);
    expect(pointers({ answer: 'deferred', until: day('2026-04-10'), note: 'away' })).toEqual(['/until']);
  });

  it('takes a second answer only in place of the first', () => {
    const settled = { standing: { kind: 'settled', by: answer() }, answers: [answer()] } as const;
    expect(pointers({}, settled)).toEqual(['/corrects']);
    expect(pointers({ corrects: 'a1' }, settled)).toEqual([]);
    expect(pointers({ corrects: 'a9' }, settled)).toEqual(['/corrects']);
    expect(pointers({ answer: 'reopened', note: 'wrong boat' })).toEqual(['/corrects']);
    expect(pointers({ answer: 'reopened', corrects: 'a1' }, settled)).toEqual(['/note']);
  });

  it('takes no answer for what is not affected or not aboard, but lets a wrong one be corrected', () => {
    const spared = {
      kind: 'not_affected',
      match: { kind: 'not_affected', because: ['the maker is Tarnbeck'] },
    } as const;
    expect(whyNotAsked(done, spared)).toContain('the maker is Tarnbeck');
    expect(whyNotAsked(done, null)).toContain('not aboard');
    expect(whyNotAsked(done, open)).toBeNull();
    expect(whyNotAsked({ ...done, corrects: 'a1' }, null)).toBeNull();
  });

  it('refuses what the answer has no use for', () => {
    expect(pointers({ until: day('2026-06-01') })).toEqual(['/until']);
    expect(pointers({ answer: 'not_affected', serialRead: 'AB1400', replaced: true })).toEqual(['/replaced']);
  });
});

describe('noticeProblems', () => {
  const at = (more: Partial<Parameters<typeof noticeProblems>[0]>) =>
    noticeProblems({ ...notice(), ...more }, day('2026-11-25')).map(({ pointer }) => pointer);

  it('finds none in a sound notice', () => {
    expect(at({})).toEqual([]);
  });

  it('names every fault', () => {
    expect(
      at({
        kinds: ['gas_hose', 'no_such'],
        makers: ['—'],
        serials: [
          { from: 'AB2', to: 'AB1' },
          { from: null, to: null },
          { from: '-', to: 'AB1' },
        ],
        manufactured: { from: day('2025-02-01'), to: day('2025-01-01') },
        issuedOn: day('2026-11-26'),
        deadline: { kind: 'on', on: day('2026-11-25') },
        document: null,
      }),
    ).toEqual([
      '/kinds/1',
      '/makers/0',
      '/serials/0',
      '/serials/1',
      '/serials/2',
      '/manufactured/to',
      '/issuedOn',
      '/deadline/on',
      '/document',
    ]);
  });
});
