/** Files in a folder of this machine. A file is there whole or not at all: written aside, flushed, then renamed. */
import { randomUUID } from 'node:crypto';
import { mkdir, open, readdir, readFile, rename, rm, stat } from 'node:fs/promises';
import path from 'node:path';
import { type BlobStore, checkName, type Stored } from './blob-store.ts';

export function openFolder(root: string): BlobStore {
  const at = (name: string) => path.join(root, ...checkName(name).split('/'));
  return {
    put: (name, bytes) => putWhole(at(name), bytes),
    get: async (name) => (await orMissing(readFile(at(name)))) ?? 'missing',
    has: async (name) => (await orMissing(stat(at(name)))) !== null,
    remove: (name) => rm(at(name), { force: true }),
    list: (prefix) => walk(root, prefix),
  };
}

async function putWhole(file: string, bytes: Uint8Array): Promise<void> {
  const folder = path.dirname(file);
  await mkdir(folder, { recursive: true });
  const aside = path.join(folder, `.${randomUUID()}`);
  try {
    await writeThrough(aside, bytes);
    await rename(aside, file);
  } catch (fault) {
    await rm(aside, { force: true });
    throw fault;
  }
  // The name and each folder above it lie in a folder of their own, which has to be flushed too.
  for (const each of [folder, path.dirname(folder), path.dirname(path.dirname(folder))]) await flushFolder(each);
}

async function writeThrough(file: string, bytes: Uint8Array): Promise<void> {
  const handle = await open(file, 'wx');
  try {
    await handle.writeFile(bytes);
    await handle.sync();
  } finally {
    await handle.close();
  }
}

/** Not every system lets a folder be opened; one that does not flushes it by itself. */
async function flushFolder(folder: string): Promise<void> {
  if (process.platform === 'win32') return;
  const handle = await open(folder, 'r');
  try {
    await handle.sync();
  } finally {
    await handle.close();
  }
}

async function* walk(root: string, prefix: string): AsyncIterable<Stored> {
  const entries = (await orMissing(readdir(root, { recursive: true, withFileTypes: true }))) ?? [];
  for (const entry of entries) {
    const name = path.relative(root, path.join(entry.parentPath, entry.name)).split(path.sep).join('/');
    // What begins with a dot was being written when the program ended.
    if (!entry.isFile() || entry.name.startsWith('.') || !name.startsWith(prefix)) continue;
    const found = await orMissing(stat(path.join(root, name)));
    if (found) yield { name, putAt: found.mtime };
  }
}

async function orMissing<T>(asked: Promise<T>): Promise<T | null> {
  try {
    return await asked;
  } catch (fault) {
    if (fault instanceof Error && 'code' in fault && fault.code === 'ENOENT') return null;
    throw fault;
  }
}
