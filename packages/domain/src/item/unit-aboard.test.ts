import { describe, expect, it } from 'vitest';
import type { Fact } from './fact.ts';
import { day, fact } from './facts.test-support.ts';
import { type Cut, unitAboard } from './unit-aboard.ts';

function aboard(facts: readonly Fact[], cut?: Cut) {
  const unit = unitAboard(facts, cut);
  return unit.kind === 'aboard' ? unit.facts.map(({ id }) => id) : unit.kind;
}

describe('after a replacement', () => {
  const old = fact('manufactured', '2015-03', { id: 'old plate' });
  const served = fact('serviced', '2024-06-01', { id: 'old service' });
  const replaced = fact('replaced', '2025-06-01', { id: 'replaced' });

  it('what was said of the old unit no longer counts', () => {
    expect(aboard([old, served, replaced])).toEqual(['replaced']);
  });

  it('says of each fact of the old unit why it was set aside', () => {
    const unit = unitAboard([old, served, replaced]);
    const whys = unit.kind === 'aboard' ? unit.setAside.map(({ fact: { id }, why }) => `${id}: ${why}`) : [];
    expect(whys).toEqual([
      'old plate: It belongs to what was replaced on 1 June 2025. If it was read on the new one, record the day on which it was read.',
      'old service: It belongs to what was replaced on 1 June 2025.',
    ]);
  });

  it('an older date of manufacture counts if it was read on what is aboard now', () => {
    const plate = fact('manufactured', '2025-02', { id: 'new plate', readOn: day('2025-06-03') });
    expect(aboard([old, replaced, plate])).toEqual(['replaced', 'new plate']);
  });

  it('a printed expiry later than the replacement is that of the unit aboard', () => {
    expect(aboard([fact('printed_expiry', '2028-06', { id: 'print' }), replaced])).toEqual(['replaced', 'print']);
  });

  it('a printed expiry read on the old unit stays with it, however late it runs out', () => {
    const print = fact('printed_expiry', '2028-06', { id: 'print', readOn: day('2024-06-01') });
    expect(aboard([print, replaced])).toEqual(['replaced']);
  });

  it('each replacement begins another unit', () => {
    expect(aboard([served, replaced, fact('replaced', '2026-01-10', { id: 'again' })])).toEqual(['again']);
  });

  it('one that failed replaces nothing', () => {
    const failed = fact('replaced', '2025-06-01', { outcome: 'failed', id: 'failed' });
    expect(aboard([served, failed])).toEqual(['old service', 'failed']);
  });
});

describe('on the day of the replacement itself', () => {
  const replaced = fact('replaced', '2025-06-01', { id: 'replaced', recordedAt: '2025-06-01T12:00:00Z' });
  const print = (recordedAt: string, more: object = {}) =>
    fact('printed_expiry', '2024-12', { id: 'print', readOn: day('2025-06-01'), recordedAt, ...more });

  it('what had been said before it is of the old unit, what was said after it of the new', () => {
    expect(aboard([print('2025-06-01T09:00:00Z'), replaced])).toEqual(['replaced']);
    expect(aboard([print('2025-06-01T15:00:00Z'), replaced])).toEqual(['print', 'replaced']);
    expect(aboard([print('2025-06-01T12:00:00Z'), replaced])).toEqual(['print', 'replaced']);
  });

  it('a correction speaks from when the statement was first made', () => {
    const later = print('2025-07-01T09:00:00Z', { id: 'corrected', corrects: 'print' });
    expect(aboard([print('2025-06-01T09:00:00Z'), later, replaced])).toEqual(['replaced']);
  });

  it('what is withdrawn is the old unit', () => {
    expect(aboard([fact('withdrawn', '2025-06-01', { recordedAt: '2025-06-02T12:00:00Z' }), replaced])).toEqual([
      'replaced',
    ]);
  });
});

describe('as at a day', () => {
  it('acts after the day do not count, and those of the day do', () => {
    const facts = [fact('serviced', '2025-06-01', { id: 'a' }), fact('serviced', '2026-06-01', { id: 'b' })];
    expect(aboard(facts, { asOf: day('2026-05-31') })).toEqual(['a']);
    expect(aboard(facts, { asOf: day('2026-06-01') })).toEqual(['a', 'b']);
  });

  it('plates count whenever they were read, if their unit was the one aboard', () => {
    const facts = [
      fact('manufactured', '2015-03', { id: 'old', readOn: day('2026-01-01') }),
      fact('replaced', '2026-02-01', { id: 'replaced' }),
      fact('manufactured', '2025-11', { id: 'new', readOn: day('2026-02-01') }),
    ];
    expect(aboard(facts, { asOf: day('2025-06-01') })).toEqual(['old']);
    expect(aboard(facts, { asOf: day('2026-02-01') })).toEqual(['new', 'replaced']);
  });

  it('nothing is owed for a thing that was fitted only later', () => {
    const facts = [fact('manufactured', '2023-01'), fact('installed', '2024-05-01', { id: 'fitted' })];
    expect(aboard(facts, { asOf: day('2024-04-30') })).toBe('not_yet_aboard');
    expect(aboard(facts, { asOf: day('2024-05-01') })).toContain('fitted');
  });

  it('a thing that was seen aboard before counts as aboard, whatever the fitting says', () => {
    const facts = [fact('inspected', '2024-01-10', { id: 'seen' }), fact('installed', '2024-05-01')];
    expect(aboard(facts, { asOf: day('2024-04-30') })).toEqual(['seen']);
  });
});

describe('a withdrawn thing', () => {
  const withdrawn = fact('withdrawn', '2025-06-01');

  it('is withdrawn from its day on', () => {
    expect(aboard([withdrawn])).toBe('withdrawn');
    expect(aboard([withdrawn], { asOf: day('2025-05-31') })).toEqual([]);
  });

  it('is followed by the new unit once it is replaced', () => {
    expect(aboard([withdrawn, fact('replaced', '2025-07-01', { id: 'replaced' })])).toEqual(['replaced']);
  });

  it('is not withdrawn by a withdrawal that failed or was struck out', () => {
    expect(aboard([{ ...withdrawn, outcome: 'failed' }])).not.toBe('withdrawn');
    expect(aboard([withdrawn, fact('moved', '2025-06-01', { corrects: withdrawn.id })])).toEqual(['moved 2025-06-01']);
  });
});
