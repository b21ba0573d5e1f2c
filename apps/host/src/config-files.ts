/** Where photographs and papers are kept: a folder, or a bucket of any store that speaks S3. */
import path from 'node:path';
import type { Bucket } from '@garboard/blobs/open-bucket.ts';

export type FilesPlace =
  | { readonly kind: 'folder'; readonly dir: string }
  | { readonly kind: 'bucket'; readonly bucket: Bucket };

/** What most stores take where they have no regions. */
const NO_REGION = 'us-east-1';

/** Throws with words a person can act on. Half a bucket is none: the folder would fill unseen. */
export function filesOf(env: NodeJS.ProcessEnv, dataDir: string): FilesPlace {
  const { FILES_DIR, S3_ENDPOINT, S3_BUCKET, S3_REGION, S3_ACCESS_KEY_ID, S3_SECRET_ACCESS_KEY } = env;
  const bucket = [S3_ENDPOINT, S3_BUCKET, S3_ACCESS_KEY_ID, S3_SECRET_ACCESS_KEY];
  if (bucket.every((each) => !each))
    return { kind: 'folder', dir: FILES_DIR ? path.resolve(FILES_DIR) : path.join(dataDir, 'files') };
  if (FILES_DIR) throw new Error('FILES_DIR and S3_BUCKET cannot both be set: files are kept in one place');
  if (!S3_ENDPOINT || !S3_BUCKET || !S3_ACCESS_KEY_ID || !S3_SECRET_ACCESS_KEY)
    throw new Error('S3_ENDPOINT, S3_BUCKET, S3_ACCESS_KEY_ID and S3_SECRET_ACCESS_KEY are set together');
  if (!/^https?:\/\//.test(S3_ENDPOINT))
    throw new Error('S3_ENDPOINT must be an address such as https://s3.example.org');
  const keys = { accessKeyId: S3_ACCESS_KEY_ID, secretAccessKey: S3_SECRET_ACCESS_KEY };
  return {
    kind: 'bucket',
    bucket: { endpoint: S3_ENDPOINT, bucket: S3_BUCKET, region: S3_REGION || NO_REGION, ...keys },
  };
}
