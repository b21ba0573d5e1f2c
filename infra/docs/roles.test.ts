import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { rolesPage } from './roles.ts';

describe('docs/roles.md (else: npm run roles)', () => {
  it('is what the table makes', () => {
    expect(readFileSync(new URL('../../docs/roles.md', import.meta.url), 'utf8')).toBe(rolesPage());
  });
});
