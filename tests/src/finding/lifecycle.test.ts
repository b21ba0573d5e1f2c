/**
 * The lifecycle over HTTP against the reference model: random commands by four people, some of them with an old
 * version. After each of them the finding stands where the model says, and a refusal has changed nothing.
 */
import type { Finding } from '@garboard/contract/finding/finding.ts';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { type Client, signedInPerson } from '../support/api.ts';
import { aFinding } from '../support/findings.ts';
import { reportFigure, size } from '../support/long.ts';
import { TODAY } from '../support/organisation.ts';
import { aVessel } from '../support/vessels.ts';
import { begun, COMMANDS, type Command, MODEL_STATES, type Model, predict, type Who } from './reference-model.ts';

const SEED = 20261126;
const RUNS = size(200, 10_000);
const LONGEST = 50;
const AT_ONCE = 8;

const evidence = [{ kind: 'looked', words: 'poured through and dry' }];
const put = { reviewOn: '2027-03-01', responsible: 'Tomas Reef', reason: 'parts' };
const done = { step: 'report_done', work: 'Replaced', doneOn: TODAY };
const see = (seen: string, more = {}) => ({ seen, on: TODAY, ...more });
const lower = { urgency: 'observe', reason: 'it has not moved' };

type Request = readonly ['POST' | 'PATCH', string, object];

function requestOf(command: Command, other: string): Request {
  const post = (path: string, body: object): Request => ['POST', path, body];
  switch (command) {
    case 'propose':
      return post('/remedy', { step: 'propose', work: 'Replace it' });
    case 'plan':
      return post('/remedy', { step: 'plan', forDay: '2026-12-01' });
    case 'begin':
      return post('/remedy', { step: 'begin' });
    case 'report_done':
      return post('/remedy', done);
    case 'report_done_by_another':
      return post('/remedy', { ...done, doneBy: { name: 'Ines Vale', capacity: 'rigger' } });
    case 'send_back':
      return post('/verification', { right: false, words: 'still weeps' });
    case 'verify':
      return post('/verification', { right: true, evidence });
    case 'verify_without_evidence':
      return post('/verification', { right: true });
    case 'defer':
      return post('/remedy', { step: 'defer', until: '2027-04-01', ...put });
    case 'accept':
      return post('/remedy', { step: 'accept', ...put });
    case 'enter_in_error':
      return post('/remedy', { step: 'enter_in_error', reason: 'wrong boat' });
    case 'reopen':
      return post('/remedy', { step: 'reopen', reason: 'it is back' });
    case 'merge':
      return post('/merge', { into: other, reason: 'the same' });
    case 'see_same':
      return post('/sightings', see('unchanged'));
    case 'see_worse':
      return post('/sightings', see('worse'));
    case 'see_gone':
      return post('/sightings', see('gone', { evidence }));
    case 'not_examined':
      return post('/sightings', see('not_examined', { words: 'locker full' }));
    case 'raise':
      return ['PATCH', '', { urgency: 'before_use' }];
    case 'lower_on_paper':
      return ['PATCH', '', lower];
    case 'lower_by_sight':
      return post('/sightings', see('better', { urgency: 'observe' }));
  }
}

type Step = { readonly command: Command; readonly who: Who; readonly late: boolean };
type Crew = Record<Who, Client>;

async function aCrew(): Promise<Crew> {
  const manager = await signedInPerson({ role: 'manager' });
  const join = (role: 'manager' | 'yard' | 'surveyor') => signedInPerson({ role }, manager.organisation);
  return {
    manager,
    other_manager: await join('manager'),
    yard: await join('yard'),
    surveyor: await join('surveyor'),
  };
}

const covered = new Set<string>();
let commands = 0;

async function live(crew: Crew, steps: readonly Step[]): Promise<void> {
  const ctx = crew.manager.organisation.ctx();
  // A boat of its own for each life: one with thousands of findings would make every later step slower.
  const vessel = await aVessel(ctx);
  const { id } = await aFinding(ctx, vessel.id, { urgency: 'observe' });
  const other = await aFinding(ctx, vessel.id, { what: 'another' });
  let model: Model = begun();
  let version = 1;
  for (const { command, who, late } of steps) {
    const [method, path, body] = requestOf(command, other.id);
    const headers = { 'if-match': `"${late ? version + 7 : version}"` };
    const send = method === 'POST' ? crew[who].post : crew[who].patch;
    const told = await send<Finding>(`/v1/findings/${id}${path}`, body, headers);
    const { status, next } = predict(model, command, who);
    const expected = late && status !== 403 ? 412 : status;
    const words = `${model.state}${model.urgent ? ' before use' : ''}: ${command} by ${who}`;
    expect(told.status, `${words}: ${told.text}`).toBe(expected);
    commands += 1;
    covered.add(`${model.state} ${command}`);
    if (expected === 200) {
      model = next;
      version += 1;
      expect([told.body.remedy.state, told.body.urgency === 'before_use'], words).toEqual([next.state, next.urgent]);
    }
  }
  const at = await crew.yard.get<Finding>(`/v1/findings/${id}`);
  expect([at.body.remedy.state, at.headers.get('etag')]).toEqual([model.state, `"${version}"`]);
}

const step: fc.Arbitrary<Step> = fc.record({
  // What is put off or accepted is seldom reached otherwise.
  command: fc.oneof(
    { weight: 5, arbitrary: fc.constantFrom(...COMMANDS) },
    { weight: 1, arbitrary: fc.constantFrom<Command>('accept', 'defer') },
  ),
  who: fc.constantFrom<Who>('yard', 'manager', 'other_manager', 'surveyor'),
  late: fc.integer({ min: 0, max: 11 }).map((n) => n === 0),
});
const ALL_PAIRS = MODEL_STATES.flatMap((state) => COMMANDS.map((command) => `${state} ${command}`));

it(
  `lives as the reference model does, in ${RUNS} random runs`,
  async () => {
    const runs = fc.sample(fc.array(step, { minLength: 10, maxLength: LONGEST, size: 'max' }), {
      seed: SEED,
      numRuns: RUNS,
    });
    const crews = await Promise.all(Array.from({ length: AT_ONCE }, aCrew));
    await Promise.all(
      crews.map(async (crew, at) => {
        for (const run of runs.filter((_, index) => index % AT_ONCE === at)) await live(crew, run);
      }),
    );

    expect(ALL_PAIRS.filter((pair) => !covered.has(pair))).toEqual([]);
    reportFigure(
      'lives of findings against the reference model',
      `${RUNS} runs, ${commands} commands, ${covered.size} pairs`,
    );
  },
  size(120_000, 3_600_000),
);
