import { RULES } from '@garboard/domain/rule/rules.ts';
import { describe, expect, it } from 'vitest';
import { answerFromDomain } from './answer-from-domain.ts';
import { differencesFrom } from './differences.ts';
import { readDueDateCases } from './read-cases.ts';

const CASES = readDueDateCases();

describe('the rules engine, on worked cases', () => {
  it.each(CASES.map((each) => [each.title, each] as const))('%s', (_, { request, expect: expected }) => {
    const answer = answerFromDomain(request);
    expect(expected.flatMap((one) => differencesFrom(one, answer))).toEqual([]);
  });

  it('has a case for every rule, and names no rule that does not exist', () => {
    const named = new Set(CASES.flatMap((each) => each.expect.map(({ ruleId }) => ruleId)));
    expect([...named].sort()).toEqual(RULES.map(({ id }) => id).sort());
  });

  it('tells every case apart by its number or name', () => {
    expect(new Set(CASES.map((each) => each.case)).size).toBe(CASES.length);
  });
});

describe('a case that is wrong', () => {
  const [{ request }] = CASES.filter((each) => each.case === 11) as [(typeof CASES)[number]];
  const answer = answerFromDomain(request);

  it.each([
    [{ ruleId: 'raft-solas', dueOn: '2026-11-05' }, 'raft-solas: dueOn is "2026-11-04", not "2026-11-05"'],
    [{ ruleId: 'raft-solas', latestPermittedOn: null }, 'raft-solas: latestPermittedOn is "2027-04-04", not null'],
    [{ ruleId: 'raft-solas', doubt: 'anything' }, 'raft-solas: no doubt says "anything"'],
    [{ ruleId: 'raft-solas', absent: true }, 'raft-solas is there'],
    [{ ruleId: 'raft-us', standing: 'unknown' }, 'raft-us is not there'],
  ] as const)('is told: %j', (expected, difference) => {
    expect(differencesFrom(expected, answer)).toEqual([difference]);
  });
});
