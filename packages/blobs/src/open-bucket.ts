/** Files in a bucket of any store that speaks S3. */
import {
  DeleteObjectCommand,
  GetObjectCommand,
  HeadObjectCommand,
  NoSuchKey,
  NotFound,
  PutObjectCommand,
  paginateListObjectsV2,
  S3Client,
} from '@aws-sdk/client-s3';
import { type BlobStore, checkName, type Stored } from './blob-store.ts';

export type Bucket = {
  readonly endpoint: string;
  readonly region: string;
  readonly bucket: string;
  readonly accessKeyId: string;
  readonly secretAccessKey: string;
};

export function openBucket({ endpoint, region, bucket, accessKeyId, secretAccessKey }: Bucket): BlobStore {
  const client = new S3Client({
    endpoint,
    region,
    credentials: { accessKeyId, secretAccessKey },
    // Not every store answers to names of hosts of its buckets, nor knows the newer checksums.
    forcePathStyle: true,
    requestChecksumCalculation: 'WHEN_REQUIRED',
    responseChecksumValidation: 'WHEN_REQUIRED',
  });
  return {
    put: async (name, bytes) => {
      await client.send(new PutObjectCommand({ Bucket: bucket, Key: checkName(name), Body: bytes }));
    },
    get: async (name) => {
      try {
        const { Body } = await client.send(new GetObjectCommand({ Bucket: bucket, Key: checkName(name) }));
        return Body ? await Body.transformToByteArray() : 'missing';
      } catch (fault) {
        if (fault instanceof NoSuchKey) return 'missing';
        throw fault;
      }
    },
    has: async (name) => {
      try {
        await client.send(new HeadObjectCommand({ Bucket: bucket, Key: checkName(name) }));
        return true;
      } catch (fault) {
        if (fault instanceof NotFound) return false;
        throw fault;
      }
    },
    remove: async (name) => {
      await client.send(new DeleteObjectCommand({ Bucket: bucket, Key: checkName(name) }));
    },
    list: (prefix) => walk(client, bucket, prefix),
  };
}

async function* walk(client: S3Client, bucket: string, prefix: string): AsyncIterable<Stored> {
  for await (const { Contents = [] } of paginateListObjectsV2({ client }, { Bucket: bucket, Prefix: prefix }))
    for (const { Key, LastModified } of Contents) if (Key && LastModified) yield { name: Key, putAt: LastModified };
}
