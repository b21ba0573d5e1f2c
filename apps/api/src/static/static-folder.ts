/** A folder of built files, served by exact name: what is not on the list made at the start is not there. */
import { readdirSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import path from 'node:path';

export type StaticFolder = {
  has(name: string): boolean;
  /** Only for a name that `has` knows. */
  read(name: string): Promise<Uint8Array<ArrayBuffer>>;
};

export function openFolder(folder: string): StaticFolder {
  const names = new Set(
    readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => path.relative(folder, path.join(entry.parentPath, entry.name)).split(path.sep).join('/')),
  );
  return {
    has: (name) => names.has(name),
    read: async (name) => Uint8Array.from(await readFile(path.join(folder, name))),
  };
}

const TYPES: Partial<Record<string, string>> = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json',
  '.map': 'application/json',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.txt': 'text/plain; charset=utf-8',
  '.webmanifest': 'application/manifest+json',
  '.woff2': 'font/woff2',
};

export const contentType = (name: string) => TYPES[path.extname(name)] ?? 'application/octet-stream';
