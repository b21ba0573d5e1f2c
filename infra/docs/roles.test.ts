import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { rolesModule, rolesPage } from './roles.ts';

describe('docs/roles.md (else: npm run roles)', () => {
  it('is what the table makes', () => {
    expect(readFileSync(new URL('../../docs/roles.md', import.meta.url), 'utf8')).toBe(rolesPage());
  });
});

describe('the client’s table of roles (else: npm run roles)', () => {
  it('is what the table makes', () => {
    const made = new URL('../../packages/client/src/generated/roles.ts', import.meta.url);
    expect(readFileSync(made, 'utf8')).toBe(rolesModule());
  });
});
