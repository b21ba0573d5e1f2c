import { describe, expect, it } from 'vitest';
import type { Step } from './entry.ts';
import { readEntry } from './finding.ts';
import { after, entry, found, GROUND, STEPS, seen } from './findings.test-support.ts';
import { type Ground, judgeStep } from './judge-step.ts';

const finding = (more = {}, ...steps: Step[]) => after(found(more), ...steps.map((step) => entry(step)));
type Options = { ground?: Partial<Ground>; by?: string; on?: string };

function judged(about: ReturnType<typeof finding>, step: Step, { ground = {}, by = 'person:two', on }: Options = {}) {
  const answer = judgeStep(about, entry(step, on ?? '2026-07-01', by), { ...GROUND, ...ground });
  return answer.kind === 'faults' ? answer.faults.map(({ pointer }) => pointer) : answer.kind;
}

describe('verification', () => {
  const done = finding({}, STEPS.reportDone);

  it('is for somebody other than whoever did the work', () => {
    expect(judged(done, STEPS.verify)).toBe('taken');
    expect(judged(done, STEPS.verify, { by: 'person:one' })).toEqual(['/right']);
  });

  it('may be whoever only wrote down that another did it', () => {
    const byAnother = {
      ...STEPS.reportDone,
      doneBy: { name: 'Ines Vale', capacity: 'rigger', certificate: null },
    } as const;
    expect(judged(finding({}, byAnother), STEPS.verify, { by: 'person:one' })).toBe('taken');
  });

  it('is for anybody where the second pair of eyes is switched off, and then says so', () => {
    const alone = { ...STEPS.verify, independent: false };
    expect(judged(done, alone, { by: 'person:one', ground: { secondPairOfEyes: false } })).toBe('taken');
    expect(readEntry(done, entry(alone)).remedy).toEqual({ state: 'verified', on: '2026-06-01', independent: false });
  });

  it('asks for evidence', () => {
    expect(judged(done, { ...STEPS.verify, evidence: [] })).toEqual(['/evidence']);
  });

  it('cannot be of work that nobody reported', () => {
    expect(judged(finding(), STEPS.verify)).toBe('not_from_here');
  });
});

describe('a sighting', () => {
  it('of something gone ends it, with evidence, by somebody who may say so and did not do the work', () => {
    const done = finding({}, STEPS.reportDone);
    expect(judged(done, seen('gone'))).toBe('taken');
    expect(judged(done, seen('gone'), { by: 'person:one' })).toEqual(['/seen']);
    expect(judged(finding(), seen('gone', { evidence: [] }))).toEqual(['/evidence']);
    expect(judged(finding(), seen('gone'), { ground: { role: 'yard' } })).toEqual(['/seen']);
  });

  it('lets before_use down only when a surveyor has looked', () => {
    const urgent = finding({ urgency: 'before_use' });
    const lower = seen('better', { said: { urgency: 'observe', urgentBy: null } });
    expect(judged(urgent, lower)).toEqual(['/urgency']);
    expect(judged(urgent, lower, { ground: { role: 'surveyor' } })).toBe('taken');
    expect(judged(urgent, lower, { ground: { surveyorAttends: true } })).toBe('taken');
  });

  it('is of no day ahead and none before it was found', () => {
    expect(judged(finding(), seen('worse'), { on: '2026-07-02' })).toEqual(['/on']);
    expect(judged(finding(), seen('worse'), { on: '2026-05-31' })).toEqual(['/on']);
  });
});

describe('a change of what is written', () => {
  const lower = (urgency: 'observe' | 'before_use', reason: string | null): Step => ({
    step: 'amended',
    change: {},
    said: { urgency, urgentBy: null },
    reason,
  });

  it('never lets before_use down', () => {
    expect(
      judged(finding({ urgency: 'before_use' }), lower('observe', 'it looks fine'), { ground: { role: 'surveyor' } }),
    ).toEqual(['/urgency']);
  });

  it('asks for a reason to let anything else down, and for none to raise it', () => {
    expect(judged(finding(), lower('observe', null))).toEqual(['/reason']);
    expect(judged(finding(), lower('observe', 'it has not moved'))).toBe('taken');
    expect(judged(finding(), lower('before_use', null))).toBe('taken');
  });

  it('asks for a reason to name a later day', () => {
    const later: Step = {
      step: 'amended',
      change: {},
      said: { urgency: 'within_weeks', urgentBy: '2026-08-01' },
      reason: null,
    };
    expect(judged(finding({ urgentBy: '2026-07-10' }), later)).toEqual(['/reason']);
    expect(judged(finding({ urgentBy: '2026-08-10' }), later)).toBe('taken');
  });
});

describe('putting off and accepting', () => {
  it('are refused for what must be dealt with before use', () => {
    const urgent = finding({ urgency: 'before_use' });
    expect(judged(urgent, STEPS.defer)).toEqual(['/step']);
    expect(judged(urgent, STEPS.accept)).toEqual(['/step']);
  });

  it('want a review ahead and no later than the organisation’s cap', () => {
    expect(judged(finding(), { ...STEPS.accept, reviewOn: '2026-07-01' })).toEqual(['/reviewOn']);
    expect(judged(finding(), { ...STEPS.accept, reviewOn: '2027-07-01' })).toBe('taken');
    expect(judged(finding(), { ...STEPS.accept, reviewOn: '2027-07-02' })).toEqual(['/reviewOn']);
    expect(judged(finding(), { ...STEPS.defer, reviewOn: '2026-09-02' })).toEqual(['/reviewOn']);
  });

  // SI 2023/1216 reg 20 and 46 CFR 176.600 leave a period for repair: a decision of one's own does not lengthen it.
  it('never go past a rule’s own limit', () => {
    const limited = finding({ limit: { on: '2026-08-15', source: 'SI 2023/1216 reg 20' } });
    expect(judged(limited, STEPS.defer)).toEqual(['/until']);
    expect(judged(limited, { ...STEPS.defer, until: '2026-08-15', reviewOn: '2026-08-01' })).toBe('taken');
    expect(judged(limited, STEPS.accept)).toEqual(['/step']);
  });

  it('never go past what its rule asks of the thing anyway, whichever comes first', () => {
    const ground = { ruleLimit: { on: '2026-08-10', source: 'MGN 280 27.3.3' } };
    const until = { ...STEPS.defer, until: '2026-08-15', reviewOn: '2026-08-01' };
    expect(judged(finding(), until, { ground })).toEqual(['/until']);
    expect(judged(finding(), { ...until, until: '2026-08-10' }, { ground })).toBe('taken');
    expect(
      judged(finding({ limit: { on: '2026-08-12', source: 'x' } }), { ...until, until: '2026-08-11' }, { ground }),
    ).toEqual(['/until']);
    expect(judged(finding(), STEPS.accept, { ground })).toEqual(['/step']);
  });

  it('end when it is seen worse, or turns out to matter before use', () => {
    const put = finding({}, STEPS.defer);
    expect(readEntry(put, entry(seen('unchanged'))).remedy.state).toBe('deferred');
    expect(readEntry(put, entry(seen('worse'))).remedy.state).toBe('found');
    const said = { urgency: 'before_use', urgentBy: null } as const;
    expect(readEntry(put, entry({ step: 'amended', change: {}, said, reason: null })).remedy.state).toBe('found');
  });
});

describe('what has ended', () => {
  it('is open again when somebody sees it again', () => {
    const gone = finding({}, STEPS.reportDone, STEPS.verify);
    expect(judged(gone, seen('worse'))).toBe('taken');
    const back = readEntry(gone, entry(seen('unchanged'), '2026-06-20'));
    expect(back).toMatchObject({ remedy: { state: 'found' }, urgencySince: '2026-06-20', firstSeenOn: '2026-06-01' });
  });

  it('takes nothing but that once it was entered in error', () => {
    const wrong = finding({}, STEPS.error);
    for (const step of [STEPS.plan, STEPS.reportDone, STEPS.defer, seen('worse'), STEPS.verify])
      expect(judged(wrong, step)).toBe('not_from_here');
    expect(judged(wrong, STEPS.reopen)).toBe('taken');
  });
});
