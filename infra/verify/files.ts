/** The repository's own files, as git sees them: tracked, or new and not ignored. */
import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';

export type SourceFile = { readonly name: string; readonly text: string };

const BINARY = /[.](png|jpe?g|webp|woff2?|ico|pdf)$/;

export function readRepository(root: string): SourceFile[] {
  const listing = execFileSync('git', ['ls-files', '-z', '--cached', '--others', '--exclude-standard'], { cwd: root });
  return listing
    .toString()
    .split('\0')
    .filter((name) => name !== '' && !BINARY.test(name) && existsSync(path.join(root, name)))
    .map((name) => ({ name, text: readFileSync(path.join(root, name), 'utf8') }));
}
