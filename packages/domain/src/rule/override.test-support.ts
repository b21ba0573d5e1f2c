/** A short way to write an organisation's own figure in tests. */
import { day } from '../item/facts.test-support.ts';
import type { Override } from './override.ts';

/** For everything aboard, from 1 March 2026, known since that morning, still in force. */
export function override(of: Pick<Override, 'ruleId' | 'duty' | 'period'> & Partial<Override>): Override {
  return {
    id: `${of.ruleId} ${of.period}`,
    itemId: null,
    weight: 'maker',
    decidedBy: 'Anna Berg',
    reason: 'the book that came with it',
    document: 'Owner’s manual, page 12',
    from: day('2026-03-01'),
    recordedAt: '2026-03-01T08:00:00Z',
    ended: null,
    ...of,
  };
}
