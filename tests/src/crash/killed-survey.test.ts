/** Kill -9 in the middle of a survey: of forty photographs on their way, and of a visit of 300 sightings being completed. */
import { createHash } from 'node:crypto';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { EvidenceFilePage, Upload } from '@garboard/contract/evidence/evidence.ts';
import type { Finding } from '@garboard/contract/finding/finding.ts';
import type { SealedCopy, Visit } from '@garboard/contract/survey-visit/visit.ts';
import type { Walk } from '@garboard/contract/survey-visit/walk.ts';
import { describe, expect, it, onTestFinished } from 'vitest';
import { aJpeg, sha256Of } from '../support/evidence.ts';
import { administer, type GarboardProcess, startGarboardProcess } from '../support/garboard-process.ts';
import { reportFigure, size } from '../support/long.ts';
import { ask } from './ask.ts';

const PHOTOGRAPHS = 40;
const SIGHTINGS = 300;
const WHOLE =
  /^Crash Harbour: audit of \d+ rows is whole, head \d+:[0-9a-f]{64}\n1 vessels, 0 obligations differed, 0 findings differed, 0 day counts differed\n\d+ files, 0 missing$/;

type Harbour = {
  readonly running: GarboardProcess;
  readonly key: string;
  readonly vesselId: string;
  /** Starts it again on what is left. */
  again(): Promise<GarboardProcess>;
  check(): Promise<string>;
};

async function aHarbour(): Promise<Harbour> {
  const dataDir = await mkdtemp(path.join(tmpdir(), 'garboard-crash-'));
  const settings = { DATA_DIR: dataDir, DEMO: 'no', RATE_LIMIT_CREDENTIAL: '0', RATE_LIMIT_ADDRESS: '0' };
  onTestFinished(() => rm(dataDir, { recursive: true, force: true }));
  const again = async () => {
    const started = await startGarboardProcess(settings);
    onTestFinished(async () => void (isRunning(started) && (await started.end('SIGTERM'))));
    return started;
  };
  const running = await again();
  await administer(settings, 'create-organisation', 'Crash Harbour');
  const key = await administer(settings, 'create-api-key', '--organisation', 'Crash Harbour', '--role', 'surveyor');
  const owner = await administer(settings, 'create-api-key', '--organisation', 'Crash Harbour', '--role', 'owner');
  const { id } = await ask<{ id: string }>(running.address, owner, ['POST', '/v1/vessels'], { name: 'Tern' });
  return { running, key, vesselId: id, again, check: () => administer(settings, 'check') };
}

const isRunning = ({ process: { exitCode, signalCode } }: GarboardProcess) => exitCode === null && signalCode === null;

describe('killed while photographs come in', () => {
  it.each(Array.from({ length: size(1, 5) }, (_, round) => round))(
    'keeps every acknowledged one, byte for byte, and the others can be sent to the end (round %i)',
    async () => {
      const { running, key, vesselId, again, check } = await aHarbour();
      const pictures = await Promise.all(Array.from({ length: PHOTOGRAPHS }, () => aJpeg(600, 400)));
      const begun: { upload: Upload; bytes: Buffer }[] = [];
      const kept: string[] = [];
      let killing: Promise<unknown> | undefined;
      const sending = pictures.map(async (bytes) => {
        const said = { sha256: sha256Of(bytes), bytes: bytes.length };
        const upload = await ask<Upload>(running.address, key, ['POST', `/v1/vessels/${vesselId}/uploads`], said);
        begun.push({ upload, bytes });
        const { evidenceId } = await sendOn(running.address, key, upload.id, bytes);
        if (evidenceId) kept.push(evidenceId);
        if (kept.length === PHOTOGRAPHS / 4) killing = running.end('SIGKILL');
      });
      await Promise.allSettled(sending);
      await killing;
      expect(kept.length).toBeGreaterThanOrEqual(PHOTOGRAPHS / 4);
      expect(kept.length).toBeLessThan(PHOTOGRAPHS);

      const { address } = await again();
      for (const id of kept) expect(await hashOf(address, key, id)).toBe((await about(address, key, id)).sha256);
      for (const { upload, bytes } of begun) {
        const { state, evidenceId } = await sendOn(address, key, upload.id, bytes);
        expect(state).toBe('kept');
        expect(await hashOf(address, key, evidenceId ?? '')).toBe(sha256Of(bytes));
      }
      const { items } = await ask<EvidenceFilePage>(address, key, [
        'GET',
        `/v1/vessels/${vesselId}/evidence?limit=200`,
      ]);
      expect(items.map(({ sha256 }) => sha256).sort()).toEqual(begun.map(({ bytes }) => sha256Of(bytes)).sort());
      expect(await check()).toMatch(WHOLE);
    },
  );
});

/** From wherever it stands to its end, in four pieces. */
async function sendOn(address: string, key: string, id: string, bytes: Buffer): Promise<Upload> {
  const path = `/v1/uploads/${id}`;
  const response = await fetch(address + path, { headers: { authorization: `Bearer ${key}` } });
  const upload = (await response.json()) as Upload;
  if (upload.state !== 'receiving') return upload;
  const piece = bytes.subarray(upload.received, upload.received + Math.ceil(bytes.length / 4));
  await ask<Upload>(address, key, ['PATCH', path], piece, { 'if-match': response.headers.get('etag') ?? '' });
  return sendOn(address, key, id, bytes);
}

const about = (address: string, key: string, id: string) =>
  ask<{ sha256: string }>(address, key, ['GET', `/v1/evidence/${id}`]);

async function hashOf(address: string, key: string, id: string): Promise<string> {
  const response = await fetch(`${address}/v1/evidence/${id}/original`, {
    headers: { authorization: `Bearer ${key}` },
  });
  return createHash('sha256')
    .update(Buffer.from(await response.arrayBuffer()))
    .digest('hex');
}

/** The next kill comes so much later, until one comes too late: in full every few milliseconds of it are tried. */
const LATER_MS = size(90, 4);
const MINUTES = 60_000;

describe('killed while a visit of 300 sightings is completed', () => {
  it(
    'is each time either open as it was or sealed to the last sighting',
    async () => {
      const { running, key, vesselId, again, check } = await aHarbour();
      const visit = await walkedVisit(running.address, key, vesselId);
      let program = running;
      let now = visit;
      let kills = 0;
      for (let delay = 2; now.state === 'open'; delay += LATER_MS) {
        const completing = complete(program.address, key, visit.id).catch(() => null);
        await new Promise((resolve) => setTimeout(resolve, delay));
        await program.end('SIGKILL');
        const answered = await completing;
        program = await again();
        kills += 1;
        now = await ask<Visit>(program.address, key, ['GET', `/v1/visits/${visit.id}`]);
        if (answered) expect(now.sealedHash).toBe(answered.sealedHash);
        if (now.state === 'open') await expectNothingSealed(program.address, key, visit.id);
      }
      const { sealed, hash } = await ask<SealedCopy>(program.address, key, [
        'GET',
        `/v1/visits/${visit.id}/sealed-copy`,
      ]);
      expect(createHash('sha256').update(sealed).digest('hex')).toBe(hash);
      expect(JSON.parse(sealed).entries).toHaveLength(SIGHTINGS);
      expect(await check()).toMatch(WHOLE);
      reportFigure('kills until a visit of 300 sightings was sealed', kills);
    },
    size(5, 30) * MINUTES,
  );
});

async function expectNothingSealed(address: string, key: string, visitId: string): Promise<void> {
  await expect(ask(address, key, ['GET', `/v1/visits/${visitId}/sealed-copy`])).rejects.toThrow('404');
  const { unanswered } = await ask<Walk>(address, key, ['GET', `/v1/visits/${visitId}/walk`]);
  expect(unanswered).toEqual([]);
}

const complete = (address: string, key: string, id: string) =>
  ask<Visit>(address, key, ['POST', `/v1/visits/${id}/completion`], { completedOn: today() }, { 'if-match': '"1"' });

const today = () => new Date().toISOString().slice(0, 10);

/** Every place answered, and 300 things found on the way. */
async function walkedVisit(address: string, key: string, vesselId: string): Promise<Visit> {
  const about = { craft: 'sailing_yacht', purpose: 'condition', startedOn: today(), water: 'ashore' };
  const visit = await ask<Visit>(address, key, ['POST', `/v1/vessels/${vesselId}/visits`], about);
  const { stops } = await ask<Walk>(address, key, ['GET', `/v1/visits/${visit.id}/walk`]);
  for (const { zone } of stops)
    await ask(address, key, ['POST', `/v1/visits/${visit.id}/zones`], { zone, answer: 'sighting' });
  for (let n = 0; n < SIGHTINGS; n++)
    await ask<Finding>(address, key, ['POST', `/v1/vessels/${vesselId}/findings`], {
      ...{ zone: stops[n % stops.length]?.zone, what: `Fastening ${n} loose`, hazard: 'equipment' },
      ...{ urgency: 'next_lay_up', on: today(), visitId: visit.id },
    });
  return visit;
}
