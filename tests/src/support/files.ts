/** A store of files of the test run's own, and whoever looks at them as in the program. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { inspect } from '@garboard/blobs/evidence/inspect.ts';
import type { Files } from '@garboard/blobs/files.ts';
import { openFolder } from '@garboard/blobs/open-folder.ts';

const FILES_FOLDER = mkdtempSync(path.join(tmpdir(), 'garboard-files-'));
process.once('exit', () => rmSync(FILES_FOLDER, { recursive: true, force: true }));

export const files: Files = { store: openFolder(FILES_FOLDER), inspect };
