import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Step } from './entry.ts';
import { readEntry } from './finding.ts';
import { after, entry, found, STEPS, seen } from './findings.test-support.ts';
import { isOpen, type Move, NEXT, STATES, type State } from './next-state.ts';
import { nextToDo, readsAs } from './words.ts';

/** A step for each move of the table. */
const STEP_OF: Record<Move, Step> = {
  proposed: STEPS.propose,
  planned: STEPS.plan,
  begun: STEPS.begin,
  reported_done: STEPS.reportDone,
  sent_back: STEPS.sendBack,
  verified: STEPS.verify,
  deferred: STEPS.defer,
  accepted: STEPS.accept,
  entered_in_error: STEPS.error,
  reopened: STEPS.reopen,
  merged_into: STEPS.merge,
  seen_gone: seen('gone'),
  seen_still_there: seen('better'),
  seen_worse: seen('worse'),
};

/** Steps that lead to a state. */
const WAY_TO: Record<State, readonly Step[]> = {
  found: [],
  proposed: [STEPS.propose],
  planned: [STEPS.plan],
  in_hand: [STEPS.begin],
  reported_done: [STEPS.reportDone],
  deferred: [STEPS.defer],
  accepted: [STEPS.accept],
  verified: [STEPS.reportDone, STEPS.verify],
  entered_in_error: [STEPS.error],
  merged: [STEPS.merge],
};
const at = (state: State) => after(found(), ...WAY_TO[state].map((step) => entry(step)));
const PAIRS = STATES.flatMap((state) =>
  Object.entries(NEXT[state]).map(([move, next]) => [state, move as Move, next] as const),
);

describe('the table of steps', () => {
  it.each(PAIRS)('is what entries come to: %s, %s, %s', (state, move, next) => {
    expect(at(state).remedy.state).toBe(state);
    expect(readEntry(at(state), entry(STEP_OF[move])).remedy.state).toBe(next);
  });

  it('leads from every open state to an end, and out of every end again', () => {
    for (const state of STATES.filter(isOpen)) expect(reachable(state)).toContain('verified');
    for (const state of STATES.filter((each) => !isOpen(each))) expect(reachable(state)).toContain('found');
  });

  it('ends a finding only by verification, by being seen gone, by a mistake or by a merger', () => {
    const ending = PAIRS.filter(([state, , next]) => isOpen(state) && !isOpen(next)).map(([, move]) => move);
    expect([...new Set(ending)].sort()).toEqual(['entered_in_error', 'merged_into', 'seen_gone', 'verified']);
  });
});

function reachable(from: State, seenBefore = new Set<State>()): Set<State> {
  for (const next of Object.values(NEXT[from])) if (!seenBefore.has(next)) reachable(next, seenBefore.add(next));
  return seenBefore;
}

describe('a finding', () => {
  it('can be read again from its entries, whatever they were', () => {
    const steps = fc.array(fc.constantFrom(...Object.values(STEP_OF)), { maxLength: 30 });
    fc.assert(
      fc.property(steps, (all) => {
        const entries = [found(), ...all.map((step) => entry(step))];
        const [first, ...rest] = entries;
        expect(rest.reduce(readEntry, after(first as ReturnType<typeof found>))).toEqual(after(...entries));
        expect(JSON.parse(JSON.stringify(after(...entries)))).toEqual(after(...entries));
      }),
    );
  });

  it('does not begin with anything but what was found', () => {
    expect(() => after(entry(STEPS.begin))).toThrow('begins with what was found');
  });

  it('keeps its day when the same urgency is said again', () => {
    const again = seen('unchanged', { said: { urgency: 'before_use', urgentBy: null } });
    expect(after(found({ urgency: 'before_use' }), entry(again, '2026-06-20')).urgencySince).toBe('2026-06-01');
  });

  it('is not seen where nobody looked', () => {
    expect(after(found(), entry(seen('not_examined'), '2026-06-20'))).toMatchObject({
      lastSeenOn: '2026-06-01',
      lastSeen: 'new',
    });
  });

  it('reads differently in each state, and says when nobody else has checked', () => {
    const readings = STATES.map((state) => readsAs(at(state)));
    expect(new Set(readings).size).toBe(STATES.length);
    const alone = after(found(), entry(STEPS.reportDone), entry({ ...STEPS.verify, independent: false }));
    expect(readsAs(alone)).toBe('Closed on 2026-06-01, not independently checked');
    expect(STATES.map((state) => nextToDo(at(state))).filter((words) => words === 'Nothing')).toHaveLength(3);
  });
});
