/**
 * What keeps a visit from being completed, over HTTP against a second, small reading of it: a set of things that want
 * an answer, from which each answer takes one away. Random surveys of one boat, visit after visit; whenever somebody
 * tries to complete one, the refusal must name exactly what is left.
 */
import type { Finding } from '@garboard/contract/finding/finding.ts';
import type { Problem } from '@garboard/contract/problem.ts';
import type { Limitation } from '@garboard/contract/survey-visit/walk.ts';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { type Client, match, signedIn, type Told } from '../support/api.ts';
import { reportFigure, size } from '../support/long.ts';
import { TODAY } from '../support/organisation.ts';
import { aVessel } from '../support/vessels.ts';

const SEED = 20261127;
const RUNS = size(100, 10_000);
const AT_ONCE = 4;
const ZONES = ['papers', 'deck', 'cockpit'] as const;

const COMMANDS = [
  'answer_place',
  'find_on_visit',
  'find_in_passing',
  'see_on_visit',
  'see_gone_on_visit',
  'see_in_passing',
  'close_in_error',
  'impose',
  'leave_limitation',
  'lift_limitation',
  'complete',
  'complete_with_old_version',
  'begin_next',
] as const;
type Command = (typeof COMMANDS)[number];
type Step = { readonly command: Command; readonly which: number };

/** What the model knows: the visit, and what wants an answer of it. `version` is that of the thing itself. */
type Thing = { readonly id: string; version: number; open: boolean };
type Model = { visitId: string; completed: boolean; wants: Set<string>; findings: Thing[]; limitations: Thing[] };

const STATES = ['nothing left', 'something left', 'completed'] as const;
const stateOf = ({ completed, wants }: Model): (typeof STATES)[number] =>
  completed ? 'completed' : wants.size === 0 ? 'nothing left' : 'something left';

const covered = new Set<string>();
let commands = 0;

const IDLE = 'there is nothing to do it to';
/** `null` where a refusal was expected and held against the model already. */
type Outcome = Told<unknown> | null | typeof IDLE;

class Survey {
  readonly #client: Client;
  readonly #vesselId: string;
  #model: Model;

  constructor(client: Client, vesselId: string, visitId: string) {
    this.#client = client;
    this.#vesselId = vesselId;
    this.#model = { visitId, completed: false, wants: new Set(ZONES.map(place)), findings: [], limitations: [] };
  }

  static async begin(client: Client): Promise<Survey> {
    const { id } = await aVessel(client.organisation.ctx());
    return new Survey(client, id, await begun(client, id));
  }

  async take({ command, which }: Step): Promise<void> {
    const pair = `${stateOf(this.#model)}: ${command}`;
    commands += 1;
    const told = await this.#tryTo(command, which);
    if (told === IDLE) return;
    covered.add(pair);
    if (told) expect(told.status, `${pair}: ${told.text}`).toBeLessThan(300);
  }

  async #tryTo(command: Command, which: number): Promise<Outcome> {
    const zone = ZONES[which % ZONES.length] ?? 'papers';
    const on = { visitId: this.#model.visitId };
    switch (command) {
      case 'answer_place':
        return this.#unlessSealed(this.#visit('/zones', { zone, answer: 'sound' }), () => this.#answered(place(zone)));
      case 'find_on_visit':
        return this.#find({ zone, ...on });
      case 'find_in_passing':
        return this.#find({ zone });
      case 'see_on_visit':
        return this.#see(which, { seen: 'unchanged', ...on });
      case 'see_gone_on_visit':
        return this.#see(which, { seen: 'gone', ...on, evidence: [{ kind: 'looked', words: 'gone' }] });
      case 'see_in_passing':
        return this.#see(which, { seen: 'worse' });
      case 'close_in_error':
        return this.#closeInError(which);
      case 'impose':
        return this.#impose(zone);
      case 'leave_limitation':
        return this.#answerLimitation(which, { answer: 'still', reason: 'no_access_lining' });
      case 'lift_limitation':
        return this.#answerLimitation(which, { answer: 'lifted', words: 'opened up, sound' });
      case 'complete':
        return this.#complete(1);
      case 'complete_with_old_version':
        return this.#complete(7);
      case 'begin_next':
        return this.#beginNext();
    }
  }

  #answered(what: string): void {
    this.#model.wants.delete(what);
  }

  /** A sealed visit takes nothing any more: 409 of its own paths, 422 at `visitId` of those of findings. */
  async #unlessSealed<Body>(asked: Promise<Told<Body>>, then: (body: Body) => void): Promise<Outcome> {
    const told = await asked;
    if (this.#model.completed) {
      expect([409, 422], told.text).toContain(told.status);
      return null;
    }
    if (told.status < 300) then(told.body);
    return told;
  }

  #visit<Body>(path: string, body: object): Promise<Told<Body>> {
    return this.#client.post<Body>(`/v1/visits/${this.#model.visitId}${path}`, body);
  }

  async #find(more: { zone: string; visitId?: string }): Promise<Outcome> {
    const body = { ...more, what: `thing ${commands}`, hazard: 'equipment', urgency: 'observe', on: TODAY };
    const told = await this.#client.post<Finding>(`/v1/vessels/${this.#vesselId}/findings`, body);
    if (more.visitId !== undefined && this.#model.completed) {
      expect(told.status).toBe(422);
      return null;
    }
    this.#model.findings.push({ id: told.body.id, version: 1, open: true });
    if (more.visitId === undefined && !this.#model.completed) this.#model.wants.add(`/findings/${told.body.id}`);
    return told;
  }

  async #see(which: number, said: { seen: string; visitId?: string; evidence?: unknown }): Promise<Outcome> {
    const finding = pick(this.#model.findings, which);
    if (!finding) return IDLE;
    const path = `/v1/findings/${finding.id}/sightings`;
    const told = await this.#client.post(path, { ...said, on: TODAY }, match(finding.version));
    const isShut = said.visitId !== undefined && this.#model.completed;
    if (isShut) {
      expect(told.status, told.text).toBe(422);
      return null;
    }
    finding.version += 1;
    finding.open = said.seen !== 'gone';
    if (said.visitId !== undefined || !finding.open) this.#answered(`/findings/${finding.id}`);
    return told;
  }

  async #closeInError(which: number): Promise<Outcome> {
    const finding = pick(this.#model.findings, which);
    if (!finding) return IDLE;
    const body = { step: 'enter_in_error', reason: 'wrong boat' };
    const told = await this.#client.post(`/v1/findings/${finding.id}/remedy`, body, match(finding.version));
    finding.version += 1;
    finding.open = false;
    this.#answered(`/findings/${finding.id}`);
    return told;
  }

  async #impose(zone: string): Promise<Outcome> {
    const asked = this.#visit<Limitation>('/limitations', {
      zone,
      what: 'Behind the lining',
      reason: 'no_access_lining',
    });
    return this.#unlessSealed(asked, ({ id }) => this.#model.limitations.push({ id, version: 1, open: true }));
  }

  async #answerLimitation(which: number, said: { answer: string; reason?: string; words?: string }) {
    const limitation = pick(this.#model.limitations, which);
    if (!limitation) return IDLE;
    const body = { ...said, visitId: this.#model.visitId };
    const asked = this.#client.post(`/v1/limitations/${limitation.id}/answers`, body, match(limitation.version));
    return this.#unlessSealed(asked, () => {
      limitation.version += 1;
      limitation.open = said.answer === 'still';
      this.#answered(`/limitations/${limitation.id}`);
    });
  }

  async #complete(version: number): Promise<null> {
    const path = `/v1/visits/${this.#model.visitId}/completion`;
    const { status, body, text } = await this.#client.post<Problem>(path, { completedOn: TODAY }, match(version));
    const expected = { completed: [409, 412], 'something left': [422], 'nothing left': [200] }[stateOf(this.#model)];
    expect(version === 1 ? expected : [412], text).toContain(status);
    if (status === 422)
      expect(body.errors?.map(({ pointer }) => pointer).sort()).toEqual([...this.#model.wants].sort());
    if (status === 200) this.#model.completed = true;
    return null;
  }

  /** Another begins where this one ended, or while it is still open: what is open wants its answer. */
  async #beginNext(): Promise<null> {
    const { findings, limitations } = this.#model;
    this.#model = {
      visitId: await begun(this.#client, this.#vesselId),
      completed: false,
      wants: new Set([
        ...ZONES.map(place),
        ...findings.filter(({ open }) => open).map(({ id }) => `/findings/${id}`),
        ...limitations.filter(({ open }) => open).map(({ id }) => `/limitations/${id}`),
      ]),
      findings,
      limitations,
    };
    return null;
  }
}

const place = (zone: string) => `/zones/${zone}`;
const pick = (things: readonly Thing[], which: number): Thing | undefined => {
  const open = things.filter((each) => each.open);
  return open[which % Math.max(1, open.length)];
};

async function begun(client: Client, vesselId: string): Promise<string> {
  const about = { craft: 'open_boat', purpose: 'condition', startedOn: TODAY, water: 'ashore' };
  return (await client.post<{ id: string }>(`/v1/vessels/${vesselId}/visits`, about)).body.id;
}

async function aSurveyor(): Promise<Client> {
  const owner = await signedIn('owner');
  const zones = ZONES.map((zone) => ({ zone, name: zone }));
  await owner.put('/v1/survey-routes/open_boat', { zones }, match(1));
  return owner;
}

const step: fc.Arbitrary<Step> = fc.record({
  command: fc.oneof(
    { weight: 3, arbitrary: fc.constantFrom(...COMMANDS) },
    // Nothing is left only where most of what is done is an answer.
    { weight: 4, arbitrary: fc.constantFrom<Command>('answer_place', 'see_on_visit', 'leave_limitation', 'complete') },
  ),
  which: fc.nat(20),
});
const ALL_PAIRS = STATES.flatMap((state) => COMMANDS.map((command) => `${state}: ${command}`));

it(
  `is completed only when everything is answered, in ${RUNS} random surveys`,
  async () => {
    const runs = fc.sample(fc.array(step, { minLength: 12, maxLength: 50, size: 'max' }), {
      seed: SEED,
      numRuns: RUNS,
    });
    const surveyors = await Promise.all(Array.from({ length: AT_ONCE }, aSurveyor));
    await Promise.all(
      surveyors.map(async (client, at) => {
        for (const run of runs.filter((_, index) => index % AT_ONCE === at)) {
          const survey = await Survey.begin(client);
          for (const each of run) await survey.take(each);
        }
      }),
    );
    expect(ALL_PAIRS.filter((pair) => !covered.has(pair))).toEqual([]);
    reportFigure(
      'completions against the reference model',
      `${RUNS} surveys, ${commands} commands, ${covered.size} pairs`,
    );
  },
  size(120_000, 3_600_000),
);
