/** The store of files that the configuration names. */
import type { BlobStore } from '@garboard/blobs/blob-store.ts';
import { openBucket } from '@garboard/blobs/open-bucket.ts';
import { openFolder } from '@garboard/blobs/open-folder.ts';
import type { FilesPlace } from './config-files.ts';

export function openFiles(place: FilesPlace): BlobStore {
  switch (place.kind) {
    case 'folder':
      return openFolder(place.dir);
    case 'bucket':
      return openBucket(place.bucket);
  }
}
