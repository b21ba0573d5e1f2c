import { describe, expect, it } from 'vitest';
import type { Reset } from '../rule/rule.ts';
import { fact } from './facts.test-support.ts';
import { lastDone } from './last-done.ts';

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
    expect(lastDone([other, unsaid], resets)).toEqual({ fact: null, assumed: [], setAside: [] });
    expect(lastDone([fact('tested', '2024-01-01', { test: 'gas_inflation', id: 'gi' }), other], resets).fact?.id).toBe(
      'gi',
    );
  });
});

it('does not mention what failed before the last act that counts', () => {
  const failed = fact('serviced', '2023-05-01', { outcome: 'failed' });
  expect(lastDone([failed, good], BY_STATION).setAside).toEqual([]);
});
