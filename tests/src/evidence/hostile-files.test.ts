/**
 * Two hundred files that mean harm. What is asked of each: ASVS 5.0.0, 5.2.1 (size), 5.2.2 (content, not name),
 * 5.2.6 (pixels), 1.3.4 (active SVG), 3.2.1 (nothing sent in is run by a browser). Clauses from memory.
 */
import { execFile } from 'node:child_process';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { promisify } from 'node:util';
import type { Upload } from '@garboard/contract/evidence/evidence.ts';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { app, type Client, match, signedIn } from '../support/api.ts';
import { sha256Of } from '../support/evidence.ts';
import { reportFigure } from '../support/long.ts';
import { aVessel } from '../support/vessels.ts';
import { type Hostile, hostileFiles } from './hostile-files.ts';
import type { Report, Verdict } from './inspect-worker.ts';

const SEED = 20261127;
const PIECE = 1024 * 1024;
const run = promisify(execFile);
const nameOf = (at: number) => String(at).padStart(4, '0');

let all: Hostile[];
let report: Report;
let dir: string;

beforeAll(async () => {
  all = await hostileFiles(SEED);
  dir = await mkdtemp(path.join(tmpdir(), 'garboard-hostile-'));
  for (const [at, { bytes }] of all.entries()) await writeFile(path.join(dir, nameOf(at)), bytes);
  const worker = path.join(import.meta.dirname, 'inspect-worker.ts');
  const { stdout } = await run(process.execPath, [worker, dir], { maxBuffer: 64 * 1024 * 1024 });
  report = JSON.parse(stdout);
});
afterAll(() => rm(dir, { recursive: true, force: true }));

const verdictOn = (what: string): Verdict | undefined => report.verdicts[all.findIndex((each) => each.what === what)];

describe('files that mean harm', () => {
  it('are more than two hundred, and each is refused in words or kept', () => {
    expect(all.length).toBeGreaterThanOrEqual(200);
    expect(report.verdicts.map(({ file }) => file)).toEqual(all.map((_, at) => nameOf(at)));
    for (const { kind, because } of report.verdicts) {
      expect(['picture', 'kept_as_it_is', 'refused']).toContain(kind);
      if (kind === 'refused') expect(because).toMatch(/^(is|has|unfolds) /);
    }
  });

  it.each([
    ['a PNG of 20,000 by 20,000 in 1 bits', 'has 20000 by 20000 pixels'],
    ['a PNG of 20,000 by 20,000 in 8 bits', 'has 20000 by 20000 pixels'],
    ['a flat PNG of 9000 by 9000', 'has 9000 by 9000 pixels'],
    ['a flat PNG of 7000 by 7000', 'which no photograph does'],
    ['a strip of 16,000 by 1', 'is a strip'],
    ['an SVG that acts (1)', 'is no photograph'],
    ['a page or script (1)', 'is no photograph'],
    ['a GIF', 'is no photograph'],
    ['a zip that unfolds to a hundred megabytes', 'is no photograph'],
    ['a page that begins as ffd8ffe0', 'is broken or cut short'],
  ])('are refused for what they are: %s', (what, because) => {
    expect(verdictOn(what)).toMatchObject({ kind: 'refused', because: expect.stringContaining(because) });
  });

  it('that lack their end are refused, whatever their format', () => {
    const cut = report.verdicts.filter((_, at) => all[at]?.what.includes('cut after'));
    expect(cut.length).toBeGreaterThan(40);
    expect(cut.filter(({ kind }) => kind === 'picture')).toEqual([]);
  });

  it('cost what is told at the end of the run', () => {
    const slowest = report.verdicts.reduce((a, b) => (a.ms > b.ms ? a : b));
    const what = all[Number(slowest.file)]?.what;
    reportFigure('hostile files looked at', all.length);
    reportFigure('the most memory of the process that looked', `${Math.round(report.maxRssMiB)} MiB`);
    reportFigure('the slowest of them', `${Math.round(slowest.ms)} ms (${what})`);
    expect(report.maxRssMiB).toBeGreaterThan(0);
  });
});

describe('what was kept of them', () => {
  it('is shown drawn anew and without the words it hid, and otherwise only to be saved', async () => {
    const owner = await signedIn();
    const vessel = await aVessel(owner.organisation.ctx());
    const key = await owner.organisation.key();
    const kept = all.filter((_, at) => report.verdicts[at]?.kind !== 'refused');
    expect(kept.length).toBeGreaterThan(20);
    for (const { what, bytes } of kept) {
      const { state, evidenceId } = await upload(owner, key, vessel.id, bytes);
      expect(state, what).toBe('kept');
      const [view, original] = await Promise.all(
        ['view', 'original'].map((part) =>
          app.request(`/v1/evidence/${evidenceId}/${part}`, { headers: { authorization: `Bearer ${key}` } }),
        ),
      );
      expect(await harmless(view, 'inline'), what).toEqual([]);
      expect(await harmless(original, 'attachment'), what).toEqual([]);
    }
  });
});

async function upload(owner: Client, key: string, vesselId: string, bytes: Buffer): Promise<Upload> {
  const begun = { sha256: sha256Of(bytes), bytes: bytes.length };
  let { body: upload } = await owner.post<Upload>(`/v1/vessels/${vesselId}/uploads`, begun);
  for (let version = 1; upload.state === 'receiving'; version++) {
    const headers = { authorization: `Bearer ${key}`, 'content-type': 'application/octet-stream', ...match(version) };
    const body = new Uint8Array(bytes.subarray(upload.received, upload.received + PIECE));
    const response = await app.request(`/v1/uploads/${upload.id}`, { method: 'PATCH', headers, body });
    upload = (await response.json()) as Upload;
  }
  return upload;
}

/** What a browser could be made to do with an answer, in words; a problem in JSON does nothing. */
async function harmless(response: Response | undefined, as: 'inline' | 'attachment'): Promise<string[]> {
  if (!response || response.status === 404) return [];
  const type = response.headers.get('content-type') ?? 'none';
  const text = Buffer.from(await response.arrayBuffer()).toString('latin1');
  const isSaved = response.headers.get('content-disposition')?.startsWith('attachment;') ?? false;
  const isShut = response.headers.get('content-security-policy') === "default-src 'none'; sandbox";
  return [
    ...(response.headers.get('x-content-type-options') === 'nosniff' ? [] : ['its kind may be guessed']),
    ...(isShut ? [] : ['it is not shut in']),
    ...(/^(image\/(jpeg|png|webp|avif)|application\/pdf)$/.test(type) ? [] : [`it is served as ${type}`]),
    ...(as === 'attachment' && !isSaved ? ['it is shown'] : []),
    ...(as === 'inline' && type !== 'image/jpeg' ? ['it is shown as it came'] : []),
    ...(as === 'inline' && /<script|<svg|<\?php|evil\.html/.test(text) ? ['its hidden words came along'] : []),
  ];
}
