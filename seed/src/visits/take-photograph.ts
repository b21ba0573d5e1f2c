/** Keeps an invented photograph as a person's would be: announced, sent whole, looked at, put into the store. */
import { createHash } from 'node:crypto';
import { addPiece } from '@garboard/actions/evidence/add-piece.ts';
import { startUpload } from '@garboard/actions/evidence/start-upload.ts';
import type { Inspected } from '@garboard/blobs/evidence/inspect.ts';
import type { Files } from '@garboard/blobs/files.ts';
import { type Day, dateOfDay, formatDay } from '@garboard/domain/calendar/day.ts';
import { type At, wanted } from '../office.ts';
import { photographOf } from '../pictures/develop.ts';
import type { Shot } from '../pictures/scenes.ts';
import { randomOf } from '../random.ts';

export type Camera = { readonly files: Files; readonly vesselId: string };
export type Frame = {
  readonly words: string;
  readonly zone: string;
  readonly point: string | null;
  readonly visitId: string | null;
};

/** A piece has at most so many bytes; these photographs are smaller. */
export async function takePhotograph(
  at: At,
  day: Day,
  { files, vesselId }: Camera,
  shot: Omit<Shot, 'year'>,
  frame: Frame,
): Promise<string> {
  const bytes = await photographOf(shot, dateOfDay(day).year, randomOf(vesselId));
  const file = { vesselId, sha256: createHash('sha256').update(bytes).digest('hex'), bytes: bytes.length };
  const upload = wanted(await startUpload(at(day), { ...file, said: { ...frame, takenOn: formatDay(day) } }));
  const piece = { uploadId: upload.id, expectedVersion: 1, body: bytes };
  const { fate } = wanted(await addPiece(at(day), files, piece));
  if (fate.kind !== 'kept') throw new Error(`demo fleets: a photograph is ${JSON.stringify(fate)}`);
  return fate.evidenceId;
}

/** Many boats have the same picture: it is looked at once. */
export function rememberWhatWasSeen(files: Files): Files {
  const seen = new Map<string, Promise<Inspected>>();
  return {
    store: files.store,
    inspect: (bytes) => {
      const key = createHash('sha256').update(bytes).digest('hex');
      const found = seen.get(key) ?? files.inspect(bytes);
      seen.set(key, found);
      return found;
    },
  };
}
