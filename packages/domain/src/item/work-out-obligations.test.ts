import { describe, expect, it } from 'vitest';
import type { Fact } from './fact.ts';
import { datesOf, day, fact, owed, owedUnder, type Question } from './facts.test-support.ts';
import { isWithdrawn } from './work-out-obligations.ts';

const serviced = fact('serviced', '2025-09-22', { by: 'liferaft_service_station' });
const raft = (more: Partial<Question> = {}): Question => ({
  kind: 'liferaft',
  schemes: ['solas'],
  facts: [serviced],
  ...more,
});

describe('an obligation', () => {
  it('says in plain words what counts and what it comes to', () => {
    expect(owedUnder('raft-solas', raft()).explanation.sentence).toBe(
      'Serviced on 22 September 2025. An inflatable liferaft is serviced at intervals of not more than 12 months, so it is due by 22 September 2026.',
    );
  });

  it('carries the rule, its scheme and weight, its source and the facts used', () => {
    expect(owedUnder('raft-solas', raft())).toMatchObject({
      ruleId: 'raft-solas',
      duty: 'service',
      scheme: 'solas',
      weight: 'law',
      action: { kind: 'service', words: 'Have the liferaft serviced at an approved station' },
      explanation: {
        source: { publication: 'SOLAS', clause: 'III/20.8.1', status: 'read' },
        binds: { limit: '12 months after the last service', on: day('2026-09-22'), factIds: [serviced.id] },
      },
    });
  });

  it('says what is missing, and where it is usually found', () => {
    const { outcome, explanation } = owedUnder('raft-solas', raft({ facts: [] }));
    const missing = [
      {
        what: 'the last service by a liferaft service station',
        whereFound: 'the service certificate, or the label on the container; for a new raft, the day it was packed',
      },
    ];
    expect(outcome).toEqual({ kind: 'undated', missing });
    expect(explanation.missing).toEqual(missing);
    expect(explanation.sentence).toBe(
      'The last service by a liferaft service station is not on record. An inflatable liferaft is serviced at intervals of not more than 12 months, so the date is not known.',
    );
  });

  it('says from which day it counts a service known only to the month', () => {
    const facts = [fact('serviced', '2025-09', { by: 'liferaft_service_station' })];
    const obligation = owedUnder('raft-solas', raft({ facts }));
    expect(datesOf(obligation)).toMatchObject({ dueOn: '2026-09-01' });
    expect(obligation.explanation.assumed).toContain(
      'Serviced in September 2025, the day not recorded: counted from 1 September 2025.',
    );
  });

  it('says which figure is from memory', () => {
    const rig = owedUnder(
      'rig-wire-insp',
      { kind: 'standing_rigging_wire', facts: [fact('installed', '2024-05-01')] },
      'inspection',
    );
    expect(datesOf(rig)).toMatchObject({ dueOn: '2029-05-01' });
    expect(rig.explanation.binds?.limit).toBe('5 years after fitting (from memory)');
    expect(rig.explanation.doubts).toEqual([
      'The figure of 5 years is from memory, not read.',
      'From memory, not read: that the first professional inspection is often at five years.',
    ]);
  });

  it('shows the facts that did not count: a failed service, an owner, a plate of the old unit, what was struck out', () => {
    const facts = [
      fact('serviced', '2023-01-10', { id: 'of the old raft' }),
      fact('replaced', '2024-03-01', { id: 'replaced' }),
      { ...serviced, id: 'counts' },
      fact('serviced', '2025-10-10', { id: 'failed', outcome: 'failed' }),
      fact('serviced', '2025-11-10', { id: 'own', by: 'owner_or_skipper' }),
      fact('serviced', '2026-02-10', { id: 'mistyped' }),
      fact('serviced', '2024-02-10', { id: 'corrected', corrects: 'mistyped' }),
    ];
    const { explanation } = owedUnder('raft-solas', raft({ facts }));
    expect(explanation.binds?.factIds).toEqual(['counts']);
    expect(explanation.setAside.map(({ factId }) => factId).sort()).toEqual([
      'corrected',
      'failed',
      'mistyped',
      'of the old raft',
      'own',
    ]);
  });

  it('shows the doubt on a fact that it rests on', () => {
    const facts = [fact('manufactured', '2010-01'), fact('printed_expiry', '2030-01')];
    expect(owedUnder('pyro-solas', { kind: 'hand_flare', schemes: ['solas'], facts }).explanation.doubts).toEqual([
      'The date printed on it lies more than 15 years after manufacture in January 2010.',
    ]);
  });

  it('is fitted by the wrong person and counts all the same, with the doubt', () => {
    const facts = [fact('replaced', '2025-05-01', { by: 'owner_or_skipper' })];
    const hose = owedUnder('lpg-reg', { kind: 'gas_regulator', facts });
    expect(datesOf(hose)).toMatchObject({ dueOn: '2035-05-01' });
    expect(hose.explanation.doubts).toEqual([
      'It was fitted by the owner or skipper; the work asks for a gas engineer.',
    ]);
  });

  it('is in doubt once the thing has been used, until it is put right', () => {
    const used = fact('activated', '2026-02-01');
    const extinguisher = (...facts: Question['facts'] & object) =>
      owedUnder('fe-us-school', { kind: 'portable_extinguisher_foam', schemes: ['us_sailing_school'], facts });
    const before = fact('serviced', '2025-10-01', { by: 'fire_equipment_technician' });
    const after = fact('serviced', '2026-02-20', { by: 'fire_equipment_technician' });
    expect(extinguisher(before, used).explanation.doubts).toEqual([
      'Used on 1 February 2026, and nothing later shows that it was put right.',
    ]);
    expect(extinguisher(before, used, after).explanation.doubts).toEqual([]);
  });

  it.each([
    ['owner_statement', "Fitted on 1 May 2025: it rests on the owner's word alone."],
    ['unknown', 'Fitted on 1 May 2025: what it rests on is not recorded.'],
  ] as const)('is in doubt where the evidence of its date is "%s"', (evidence, doubt) => {
    const facts = [fact('installed', '2025-05-01', { evidence })];
    expect(owedUnder('lpg-reg', { kind: 'gas_regulator', facts }).explanation.doubts).toEqual([doubt]);
  });

  it.each(['certificate', 'stamped', 'printed', 'record'] as const)('is not where the evidence is "%s"', (evidence) => {
    const facts = [fact('installed', '2025-05-01', { evidence })];
    expect(owedUnder('lpg-reg', { kind: 'gas_regulator', facts }).explanation.doubts).toEqual([]);
  });

  it('is in doubt while the thing has been moved and nothing shows it back, its dates as they were', () => {
    const moved = fact('moved', '2026-02-01', { note: 'to the station' });
    const away = owedUnder('raft-solas', raft({ facts: [serviced, moved] }));
    expect(datesOf(away)).toEqual(datesOf(owedUnder('raft-solas', raft())));
    expect(away.explanation.doubts).toEqual([
      'Moved on 1 February 2026 (to the station), and nothing later shows it aboard: what is lent in its place is another item.',
    ]);
    const seen = fact('inspected', '2026-02-20', { by: 'crew' });
    expect(owedUnder('raft-solas', raft({ facts: [serviced, moved, seen] })).explanation.doubts).toEqual([]);
  });

  it('of safety gear that nothing gives a date counts as not carried, and says so', () => {
    const flare: Question = { kind: 'hand_flare', schemes: ['us_recreational'] };
    const said =
      'There is no date to go by: count it as not carried until there is dated evidence (Queensland s 41 (historic)).';
    expect(owedUnder('pyro-us-rec', flare).explanation.doubts).toContain(said);
    const dated = { ...flare, facts: [fact('printed_expiry', '2027-01')] };
    expect(owedUnder('pyro-us-rec', dated).explanation.doubts).toEqual([]);
    expect(owedUnder('lpg-reg', { kind: 'gas_regulator' }).explanation.doubts).toEqual([]);
  });

  it('of a raft with one date counts as carried, though another is missing', () => {
    const made = raft({ facts: [fact('manufactured', '2024-06-20')] });
    expect(owedUnder('raft-solas', made).explanation.doubts).toEqual([]);
  });

  it('marks a fuel hose as suspect from ten years on', () => {
    const hose = owedUnder('hose-fuel', { kind: 'fuel_hose', facts: [fact('manufactured', '2016-05')] }, 'withdrawal');
    expect(datesOf(hose)).toMatchObject({ dueOn: '2036-05-01' });
    expect(hose.explanation.doubts).toEqual([
      'From 1 May 2026, at 10 years of age, it is suspect although still in date.',
    ]);
  });
});

describe('which rules apply', () => {
  const rulesOf = (question: Question) => [...new Set(owed(question).map(({ ruleId }) => ruleId))];

  it('are those of the schemes that the vessel is under, and what always applies', () => {
    expect(rulesOf({ kind: 'standing_rigging_wire' })).toEqual(['rig-wire-insp']);
    expect(rulesOf({ kind: 'standing_rigging_wire', schemes: ['insurer', 'us_sailing_school'] })).toEqual([
      'rig-wire-life',
      'rig-wire-insp',
      'rig-coi',
    ]);
  });

  it('a raft approved for extended intervals has those in place of the yearly service', () => {
    expect(rulesOf(raft({ attributes: { extendedInterval: true } }))).toEqual(['raft-ext30', 'raft-gi', 'raft-nap']);
    expect(rulesOf(raft({ attributes: { extendedInterval: false } }))).toEqual(['raft-solas', 'raft-gi', 'raft-nap']);
  });

  it('while it is not on record, the stricter reading holds and is said', () => {
    expect(rulesOf(raft())).toEqual(['raft-solas', 'raft-gi', 'raft-nap']);
    expect(owedUnder('raft-solas', raft()).explanation.assumed).toEqual([
      'Not on record, and taken to be so: raft type-approved for extended service intervals: no.',
    ]);
  });

  it('a raft of unknown standard is asked for what either standard asks', () => {
    expect(rulesOf(raft({ schemes: ['uk_small_commercial'] }))).toEqual(['raft-9650', 'raft-mgn548']);
    expect(rulesOf(raft({ schemes: ['uk_small_commercial'], attributes: { standard: 'solas' } }))).toEqual([
      'raft-mgn548',
    ]);
  });

  it('a carbon dioxide extinguisher is overhauled, the others have an extended service', () => {
    const duties = (kind: Question['kind']) => owed({ kind, schemes: ['bs5306'] }).map(({ duty }) => duty);
    expect(duties('portable_extinguisher_co2')).toEqual(['visual', 'service', 'overhaul', 'withdrawal']);
    expect(duties('portable_extinguisher_foam')).toEqual(['visual', 'service', 'extended_service', 'withdrawal']);
  });
});

describe('as at and as known at', () => {
  const later = fact('serviced', '2026-09-01', { by: 'liferaft_service_station', recordedAt: '2026-09-20T08:00:00Z' });

  it('answers for a past day from what had been done by then', () => {
    const question = raft({ facts: [serviced, later] });
    expect(datesOf(owedUnder('raft-solas', { ...question, cut: { asOf: day('2026-08-31') } }))).toMatchObject({
      dueOn: '2026-09-22',
    });
    expect(datesOf(owedUnder('raft-solas', { ...question, cut: { asOf: day('2026-09-01') } }))).toMatchObject({
      dueOn: '2027-09-01',
    });
  });

  it('answers for a past instant from what was known then', () => {
    const question = raft({
      facts: [serviced, later],
      cut: { asOf: day('2026-09-15'), knownAt: '2026-09-15T00:00:00Z' },
    });
    expect(datesOf(owedUnder('raft-solas', question))).toMatchObject({ dueOn: '2026-09-22' });
  });
});

it('knows whether a thing is withdrawn, as at a day too', () => {
  const item = { kind: 'liferaft', attributes: {}, facts: [fact('withdrawn', '2026-03-01')] } as const;
  expect(isWithdrawn(item)).toBe(true);
  expect(isWithdrawn(item, { asOf: day('2026-02-28') })).toBe(false);
  expect(isWithdrawn({ ...item, facts: [...item.facts, fact('replaced', '2026-03-02')] })).toBe(false);
});

describe('what is said of a thing', () => {
  it('after a service that failed is not that none is on record, and what is missing stays the same', () => {
    const failed = fact('serviced', '2026-03-01', { by: 'liferaft_service_station', outcome: 'failed' });
    const raft = (facts: readonly Fact[]) => owedUnder('raft-solas', { kind: 'liferaft', schemes: ['solas'], facts });

    expect(raft([failed]).explanation.sentence).toMatch(
      /^A service by a liferaft service station that counts is not on record\./,
    );
    expect(raft([failed]).explanation.setAside).toEqual([
      { factId: failed.id, why: 'It did not pass, so it resets nothing.' },
    ]);
    expect(raft([]).explanation.sentence).toMatch(/^The last service by a liferaft service station is not on record\./);
    expect(raft([failed]).outcome).toEqual(raft([]).outcome);
  });

  it('tells that months are counted whole', () => {
    const hose = owedUnder('lpg-hose', { kind: 'gas_hose', facts: [fact('manufactured', '2020-05')] });
    expect(hose.explanation.assumed).toContain('Counted in whole months: to the end of the month it leads to.');
  });

  it('is nothing before it was made, unless something shows that it was there', () => {
    const made = fact('manufactured', '2025-03');
    const asOf = (text: string, ...facts: readonly Fact[]) =>
      owed({ kind: 'gas_hose', facts: [made, ...facts], cut: { asOf: day(text) } }).length;
    expect([asOf('2025-02-28'), asOf('2025-03-01')]).toEqual([0, 1]);
    expect(asOf('2025-02-28', fact('inspected', '2025-02-01'))).toBe(1);
  });
});
