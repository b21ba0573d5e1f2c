import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { withPicture } from './finding-picture.ts';

const page = readFileSync(new URL('../../docs/findings.md', import.meta.url), 'utf8');

it('the picture of a finding’s life is drawn from the table as it is now: npm run finding-picture', () => {
  expect(page).toBe(withPicture(page));
  expect(page).toContain('reported_done --> verified: verified, seen gone');
});
