/** Which browser: the one that CHROME_PATH names, else an installed one, else the one that npm brought. */
import { execFile } from 'node:child_process';
import { existsSync, mkdirSync, renameSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { promisify } from 'node:util';

export type BrowserProgram = {
  readonly executablePath: string;
  readonly env: Record<string, string>;
  /** Where it comes from and its version, for the reader of the run. */
  readonly words: string;
};

const run = promisify(execFile);

const NAMES = ['google-chrome', 'google-chrome-stable', 'chromium', 'chromium-browser', 'chrome.exe'];
const PLACES = [
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
];

let found: Promise<BrowserProgram> | undefined;

export function findBrowser(): Promise<BrowserProgram> {
  found ??= find();
  return found;
}

async function find(): Promise<BrowserProgram> {
  const named = process.env.CHROME_PATH;
  if (named) return describe(named, 'CHROME_PATH');
  const installed = installedPath();
  return installed ? describe(installed, 'installed') : fromNpm();
}

function installedPath(): string | undefined {
  const folders = (process.env.PATH ?? '').split(path.delimiter);
  return [...folders.flatMap((folder) => NAMES.map((name) => path.join(folder, name))), ...PLACES].find((file) =>
    existsSync(file),
  );
}

async function describe(
  executablePath: string,
  origin: string,
  env: Record<string, string> = {},
): Promise<BrowserProgram> {
  const { stdout } = await run(executablePath, ['--version'], { env: { ...process.env, ...env } });
  return { executablePath, env, words: `${stdout.trim()} (${origin}: ${executablePath})` };
}

/** It is unpacked once, into a folder named by its version: the package would take any `chromium` it finds for its own. */
async function fromNpm(): Promise<BrowserProgram> {
  const version = npmVersion();
  const folder = path.join(tmpdir(), `garboard-chromium-${version}`);
  if (!existsSync(folder)) await unpack(folder);
  const executablePath = path.join(folder, 'chromium');
  const fonts = existsSync('/etc/fonts') ? {} : { FONTCONFIG_PATH: path.join(folder, 'fonts') };
  try {
    return await describe(executablePath, `from npm, ${version}`, fonts);
  } catch {
    // The machine lacks libraries that every desktop has; the package carries them.
    const libraries = { LD_LIBRARY_PATH: path.join(folder, 'al2023', 'lib') };
    return describe(executablePath, `from npm, ${version}, with its own libraries`, { ...fonts, ...libraries });
  }
}

function npmVersion(): string {
  const entry = createRequire(import.meta.url).resolve('@sparticuz/chromium');
  return createRequire(entry)('../package.json').version;
}

/** Aside first, so that nobody starts a half-written program. */
async function unpack(folder: string): Promise<void> {
  const aside = `${folder}.${process.pid}`;
  mkdirSync(aside, { recursive: true });
  const outside = process.env.TMPDIR;
  process.env.TMPDIR = aside;
  try {
    const { default: chromium, inflate } = await import('@sparticuz/chromium');
    await chromium.executablePath();
    await inflate(
      path.join(path.dirname(createRequire(import.meta.url).resolve('@sparticuz/chromium')), '../bin/al2023.tar.br'),
    );
    if (!existsSync(folder)) renameSync(aside, folder);
  } finally {
    if (outside === undefined) delete process.env.TMPDIR;
    else process.env.TMPDIR = outside;
    rmSync(aside, { recursive: true, force: true });
  }
}
