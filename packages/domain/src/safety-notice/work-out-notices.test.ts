import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatDay } from '../calendar/day.ts';
import { day, fact, situation } from '../item/facts.test-support.ts';
import type { Obligation } from '../item/obligation.ts';
import { type Cut, type ItemHistory, workOutObligations } from '../item/work-out-obligations.ts';
import type { NoticeAnswer } from './answer.ts';
import type { UnderNotices } from './judge-item.ts';
import type { SafetyNotice } from './notice.ts';
import { answer, notice, plate, plates } from './notices.test-support.ts';

type Told = {
  asked?: SafetyNotice;
  answers?: NoticeAnswer[];
  plate?: UnderNotices['plate'];
  facts?: ItemHistory['facts'];
  cut?: Cut;
};

function owed({ asked = notice(), answers = [], plate: written = plates(plate()), facts = [], cut = {} }: Told = {}) {
  const underNotices = { plate: written, notices: [{ notice: asked, answers }] };
  const item: ItemHistory = { kind: 'gas_hose', attributes: {}, facts, underNotices };
  const vessel = { schemes: [], situations: [situation('2026-01-01')], events: [] };
  return workOutObligations(item, vessel, cut).filter(({ ruleId }) => ruleId.startsWith('notice:'));
}

const dates = ([first]: readonly Obligation[]) =>
  first?.outcome.kind === 'dated' ? [first.outcome.dueOn, first.outcome.overdueAfter].map(formatDay) : first;
const match = ([first]: readonly Obligation[]) => first?.explanation.notice?.match;

describe('a notice that covers a thing', () => {
  it('puts one obligation on it, with the notice for its source', () => {
    const [obligation] = owed();
    expect(obligation).toMatchObject({
      ruleId: 'notice:n1',
      duty: 'answer',
      weight: 'maker',
      action: { kind: 'replace' },
    });
    expect(obligation?.explanation.source.publication).toBe('Quillmere Hose Works, “Hoses that may come off the tail”');
    expect(obligation?.explanation.sentence).toBe(
      'The notice of 3 March 2026 from Quillmere Hose Works covers it: maker Quillmere Hose Works; serial number AB1250, and the notice names AB1200–AB1399. What can happen: gas can escape below. Have the hose replaced by a gas engineer. The maker asks for it by 30 April 2026.',
    );
  });

  it('is due by its day, so many days after it, or from its own day where it is asked before the next use', () => {
    expect(dates(owed())).toEqual(['2026-04-30', '2026-04-30']);
    expect(dates(owed({ asked: notice({ deadline: { kind: 'days_after_issue', days: 30 } }) }))).toEqual([
      '2026-04-02',
      '2026-04-02',
    ]);
    expect(dates(owed({ asked: notice({ deadline: { kind: 'before_next_use' } }) }))).toEqual([
      '2026-03-03',
      '2026-03-03',
    ]);
  });

  it('is not suspended by laying up', () => {
    expect(owed()[0]?.explanation.suspended).toBeUndefined();
  });

  it('asks to look first where what is on record does not settle it', () => {
    const [obligation] = owed({ plate: plates(plate({ serialNumber: null })) });
    expect(obligation?.action).toEqual({
      kind: 'inspect',
      words: 'Look at the plate: “Hoses that may come off the tail” may cover it',
    });
    expect(obligation?.explanation.missing.map(({ what }) => what)).toEqual(['serial number']);
  });

  it('asks nothing of what is withdrawn, nor once it is withdrawn itself', () => {
    expect(owed({ facts: [fact('withdrawn', '2026-03-20')] })).toEqual([]);
    const withdrawn = { on: day('2026-05-01'), recordedAt: '2026-05-02T00:00:00Z' };
    const asked = notice({ withdrawn });
    expect(owed({ asked })).toEqual([]);
    expect(owed({ asked, cut: { asOf: day('2026-04-30') } })).toHaveLength(1);
    expect(owed({ asked, cut: { knownAt: '2026-05-01T12:00:00Z' } })).toHaveLength(1);
  });

  it('asks nothing before its day, nor before it was known', () => {
    expect(owed({ cut: { asOf: day('2026-03-02') } })).toEqual([]);
    expect(owed({ cut: { asOf: day('2026-03-03') } })).toHaveLength(1);
    expect(owed({ cut: { knownAt: '2026-03-10T08:59:59Z' } })).toEqual([]);
    expect(owed({ cut: { knownAt: '2026-03-10T09:00:00Z' } })).toHaveLength(1);
  });
});

describe('an answer', () => {
  it('settles it from its day on, once it is known', () => {
    const answers = [answer()];
    expect(owed({ answers })).toEqual([]);
    expect(owed({ answers, cut: { asOf: day('2026-04-01') } })).toHaveLength(1);
    expect(owed({ answers, cut: { knownAt: '2026-04-02T00:00:00Z' } })).toHaveLength(1);
  });

  it('counts no more once it is struck out', () => {
    const mistake = answer({
      id: 'a2',
      answer: 'reopened',
      note: 'wrong boat',
      corrects: 'a1',
      recordedAt: '2026-04-05T00:00:00Z',
    });
    expect(owed({ answers: [answer(), mistake] })).toHaveLength(1);
    expect(owed({ answers: [answer(), mistake], cut: { knownAt: '2026-04-04T00:00:00Z' } })).toEqual([]);
  });

  it('that puts it off is said, and moves no date', () => {
    const answers = [answer({ answer: 'deferred', until: day('2026-06-01'), note: 'no hose to be had' })];
    expect(dates(owed({ answers }))).toEqual(['2026-04-30', '2026-04-30']);
    expect(owed({ answers })[0]?.explanation.sentence).toContain(
      'Put off by Ines Vale until 1 June 2026: “no hose to be had”. The date stays.',
    );
  });

  it('does not speak for another number, and the reasoning says so', () => {
    const [obligation] = owed({ answers: [answer()], plate: plates(plate({ serialNumber: 'AB1300' })) });
    expect(obligation?.explanation.doubts).toContain(
      'It was answered on 2 April 2026, but of another thing: serial number AB1250.',
    );
  });

  it('does not speak for what came later in its place', () => {
    const facts = [fact('replaced', '2026-05-10')];
    const [obligation] = owed({ answers: [answer()], facts });
    expect(obligation?.explanation.notice?.match).toBe('may_be_affected');
    expect(obligation?.explanation.doubts).toEqual(
      expect.arrayContaining([
        'Serial number AB1250 was on record before it was replaced on 10 May 2026: it is taken to be the old one’s.',
        'It was answered on 2 April 2026, but of another thing: it was replaced on 10 May 2026.',
      ]),
    );
  });

  it('given with the replacement itself speaks for the new one', () => {
    expect(owed({ answers: [answer({ serialThen: null })], facts: [fact('replaced', '2026-04-02')] })).toEqual([]);
  });
});

describe('what is written of the plate', () => {
  const former = (until: string, replacedOn: string | null) => ({
    plate: plate(),
    until,
    replacedOn: replacedOn === null ? null : day(replacedOn),
  });

  it('counts as it was known then', () => {
    const written = plates(plate({ serialNumber: 'AB1400' }), { former: [former('2026-05-01T00:00:00Z', null)] });
    expect(owed({ plate: written })).toEqual([]);
    expect(match(owed({ plate: written, cut: { knownAt: '2026-04-30T00:00:00Z' } }))).toBe('affected');
    expect(owed({ plate: written, cut: { asOf: day('2026-04-01') } })).toEqual([]);
  });

  it('counts for the unit that was aboard on the day', () => {
    const written = plates(plate({ serialNumber: 'AB1400' }), {
      former: [former('2026-05-01T00:00:00Z', '2026-04-28')],
    });
    expect(match(owed({ plate: written, cut: { asOf: day('2026-04-27') } }))).toBe('affected');
    expect(owed({ plate: written, cut: { asOf: day('2026-04-28') } })).toEqual([]);
  });

  it('never makes two answers owed where one was: adding a serial number keeps the one obligation or ends it', () => {
    const anySerial = fc.constantFrom('AB1200', 'AB1250', 'AB1399', 'AB1400', '1250', 'illegible', 'QX7');
    fc.assert(
      fc.property(anySerial, (serialNumber) => {
        const before = owed({ plate: plates(plate({ serialNumber: null })) });
        const after = owed({ plate: plates(plate({ serialNumber })) });
        const keys = (all: readonly Obligation[]) => all.map(({ ruleId, duty }) => `${ruleId} ${duty}`);
        expect(keys(before)).toHaveLength(1);
        expect(keys(before)).toEqual(expect.arrayContaining(keys(after)));
      }),
      { seed: 31 },
    );
  });
});
