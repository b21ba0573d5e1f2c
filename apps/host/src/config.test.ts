import { describe, expect, it } from 'vitest';
import { readConfig } from './config.ts';

describe('the settings', () => {
  it('start the program on its own PostgreSQL, with demo fleets, where nothing is set', () => {
    expect(readConfig({})).toMatchObject({ port: 8080, host: '127.0.0.1', logLevel: 'warn', demo: true });
  });

  it('leave the demo fleets out of somebody else’s database unless asked for', () => {
    const DATABASE_URL = 'postgresql://keeper@db/fleet';
    expect(readConfig({ DATABASE_URL })).toMatchObject({ databaseUrl: DATABASE_URL, demo: false });
    expect(readConfig({ DATABASE_URL, DEMO: 'yes' }).demo).toBe(true);
  });

  it.each([
    ['PORT', 'eighty', 'PORT must be a port number'],
    ['DATABASE_URL', 'keeper:secret', 'DATABASE_URL must be an address such as'],
    ['LOG_LEVEL', 'loud', 'LOG_LEVEL must be one of'],
    ['DEMO', 'maybe', 'DEMO must be yes or no'],
    ['RATE_LIMIT_CREDENTIAL', 'often', 'RATE_LIMIT_CREDENTIAL must be a whole number'],
    ['RATE_LIMIT_ADDRESS', '0', 'both 0, or neither'],
    ['METRICS_TOKEN', 'guess-me', 'METRICS_TOKEN must have at least'],
    ['S3_BUCKET', 'pictures', 'are set together'],
    ['CORS_ORIGINS', 'https://one.example, *', 'CORS_ORIGINS must be addresses without a path'],
    ['CONTACT_URL', 'https://boats.example', 'CONTACT_NAME, CONTACT_URL and CONTACT_EMAIL go together'],
  ])('are refused in words that name %s when it is %s', (name, value, words) => {
    expect(() => readConfig({ [name]: value })).toThrow(words);
  });

  it('tell a credential and an address to wait unless that is switched off, and let in no other host’s pages', () => {
    expect(readConfig({})).toMatchObject({ rateLimits: { credential: 1200, address: 2400 }, corsOrigins: [] });
    expect(readConfig({ RATE_LIMIT_CREDENTIAL: '0', RATE_LIMIT_ADDRESS: '0' }).rateLimits).toBeUndefined();
    const CORS_ORIGINS = 'https://one.example, http://two.example:8081';
    expect(readConfig({ CORS_ORIGINS }).corsOrigins).toEqual(['https://one.example', 'http://two.example:8081']);
  });

  it('keep files in a folder beside the database, or in a bucket, and never in both', () => {
    const S3 = { S3_ENDPOINT: 'https://s3.example', S3_BUCKET: 'b', S3_ACCESS_KEY_ID: 'k', S3_SECRET_ACCESS_KEY: 's' };
    expect(readConfig({ DATA_DIR: '/data' }).files).toEqual({ kind: 'folder', dir: '/data/files' });
    expect(readConfig({ FILES_DIR: '/pictures' }).files).toEqual({ kind: 'folder', dir: '/pictures' });
    expect(readConfig(S3).files).toMatchObject({ kind: 'bucket', bucket: { region: 'us-east-1', bucket: 'b' } });
    expect(() => readConfig({ ...S3, FILES_DIR: '/pictures' })).toThrow('cannot both be set');
  });

  it('never repeat an address that may carry a password', () => {
    expect(() => readConfig({ DATABASE_URL: 'mysql://u:secret@h/d' })).toThrow(/^(?!.*secret)/);
  });
});
