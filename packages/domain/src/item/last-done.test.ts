import { describe, expect, it } from 'vitest';
import type { Reset } from '../rule/rule.ts';
import { fact } from './facts.test-support.ts';
import { actsThatCount, failedSince, lastDone } from './last-done.ts';

const BY_STATION: readonly Reset[] = [{ act: 'serviced', by: ['liferaft_service_station'] }];
const good = fact('serviced', '2024-05-01', { id: 'good', by: 'liferaft_service_station' });

describe('the act that resets a clock', () => {
  it('is the last that passed', () => {
    const later = fact('serviced', '2025-05-01', { id: 'later', by: 'liferaft_service_station' });
    expect(lastDone([good, later], BY_STATION).fact?.id).toBe('later');
  });

  it.each(['failed', 'partly'] as const)('is never one whose outcome is "%s", and it says why', (outcome) => {
    const bad = fact('serviced', '2025-05-01', { outcome, by: 'liferaft_service_station' });
    const { fact: last, setAside } = lastDone([good, bad], BY_STATION);
    expect(last?.id).toBe('good');
    expect(setAside).toEqual([{ fact: bad, why: expect.stringContaining('resets nothing') }]);
  });

  it('is never one done by somebody without the competence asked for', () => {
    const own = fact('serviced', '2025-05-01', { by: 'owner_or_skipper' });
    expect(lastDone([good, own], BY_STATION)).toMatchObject({
      fact: { id: 'good' },
      setAside: [{ why: 'It was done by the owner or skipper; what counts is a liferaft service station.' }],
    });
  });

  it('counts when nobody said who did it, and says what is assumed', () => {
    const { fact: last, assumed } = lastDone([fact('serviced', '2025-05-01', { id: 'unsaid' })], BY_STATION);
    expect(last?.id).toBe('unsaid');
    expect(assumed).toEqual(['It is not recorded who did the service; taken to be a liferaft service station.']);
  });

  it('may be anybody where the rule asks for nobody in particular', () => {
    const look = fact('inspected', '2025-05-01', { id: 'look', by: 'owner_or_skipper' });
    expect(lastDone([look], [{ act: 'inspected', by: [] }])).toEqual({ fact: look, assumed: [], setAside: [] });
  });

  it('is never a mere look where a service is asked for', () => {
    const look = fact('inspected', '2025-05-01', { by: 'liferaft_service_station' });
    expect(lastDone([good, look], BY_STATION)).toMatchObject({
      fact: { id: 'good' },
      setAside: [{ why: 'A look resets no service.' }],
    });
  });

  it('is the test that the rule names, not another one', () => {
    const resets: readonly Reset[] = [{ act: 'tested', tests: ['gas_inflation'], by: [] }];
    const other = fact('tested', '2025-05-01', { test: 'working_pressure' });
    const unsaid = fact('tested', '2025-06-01');
    expect(lastDone([other, unsaid], resets)).toEqual({
      fact: null,
      assumed: [],
      setAside: [{ fact: unsaid, why: 'It does not say what was done; what counts is a gas-inflation test.' }],
    });
    expect(lastDone([fact('tested', '2024-01-01', { test: 'gas_inflation', id: 'gi' }), other], resets).fact?.id).toBe(
      'gi',
    );
  });
});

it('does not mention what failed before the last act that counts', () => {
  const failed = fact('serviced', '2023-05-01', { outcome: 'failed' });
  expect(lastDone([failed, good], BY_STATION).setAside).toEqual([]);
});

describe('the acts of a duty', () => {
  const own = fact('serviced', '2025-01-10', { id: 'own', by: 'owner_or_skipper' });
  const failed = fact('serviced', '2025-02-10', { id: 'failed', outcome: 'failed', by: 'liferaft_service_station' });
  const partly = fact('serviced', '2025-03-10', { id: 'partly', outcome: 'partly', by: 'liferaft_service_station' });
  const ownFailed = fact('serviced', '2025-04-10', { outcome: 'failed', by: 'owner_or_skipper' });
  const again = fact('serviced', '2025-05-10', { id: 'again', by: 'liferaft_service_station' });
  const facts = [good, own, failed, partly, ownFailed, again];

  it('that count are all that passed, done with the competence asked for', () => {
    expect(actsThatCount(facts, BY_STATION)).toEqual([good, again]);
  });

  it('that did not pass are those since the last that did', () => {
    expect(failedSince(facts.slice(0, 5), BY_STATION, good)).toEqual([failed, partly]);
    expect(failedSince(facts, BY_STATION, again)).toEqual([]);
    expect(failedSince([failed], BY_STATION, null)).toEqual([failed]);
  });
});
