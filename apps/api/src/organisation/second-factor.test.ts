import type { Account } from '@garboard/contract/organisation/account.ts';
import { aBrowser, PASSWORD, signedUp, signIn } from '@garboard/tests/support/doors.ts';
import { totp } from '@garboard/tests/support/totp.ts';
import { describe, expect, it } from 'vitest';

describe('a second factor', () => {
  async function withFactor() {
    const { email, browser } = await signedUp();
    const { body } = await browser.post('/auth/two-factor/enable', { password: PASSWORD });
    const secret = new URL(String(body.totpURI)).searchParams.get('secret') ?? '';
    const codes = body.backupCodes as string[];
    return { email, browser, secret, codes };
  }

  it('counts as RFC 6238 does: appendix B, SHA-1, the last six of its eight digits', () => {
    const secret = 'GEZDGNBVGY3TQOJQGEZDGNBVGY3TQOJQ';
    expect([59, 1111111109, 1234567890, 2000000000].map((s) => totp(secret, s * 1000))).toEqual([
      '287082',
      '081804',
      '005924',
      '279037',
    ]);
  });

  it('is asked for once it was proven, and the password alone opens nothing', async () => {
    const { email, browser, secret } = await withFactor();
    expect((await browser.post('/auth/two-factor/verify-totp', { code: '000000' })).status).toBe(401);
    expect((await browser.post('/auth/two-factor/verify-totp', { code: totp(secret) })).status).toBe(200);
    expect((await browser.get<Account>('/v1/account')).body.secondFactor).toBe(true);

    const again = aBrowser();
    const { body } = await signIn(again, email);
    expect(body).toMatchObject({ twoFactorRedirect: true });
    expect((await again.get('/v1/session')).status).toBe(401);
    expect((await again.post('/auth/two-factor/verify-totp', { code: '000000' })).status).toBe(401);
    expect((await again.post('/auth/two-factor/verify-totp', { code: totp(secret) })).status).toBe(200);
    expect((await again.get('/v1/session')).status).toBe(200);
  });

  it('can be stood in for by a recovery code, once', async () => {
    const { email, browser, secret, codes } = await withFactor();
    await browser.post('/auth/two-factor/verify-totp', { code: totp(secret) });
    const use = async () => {
      const again = aBrowser();
      await signIn(again, email);
      return (await again.post('/auth/two-factor/verify-backup-code', { code: codes[0] })).status;
    };
    expect([await use(), await use()]).toEqual([200, 401]);
  });

  it('is taken away by who knows the password', async () => {
    const { email, browser, secret } = await withFactor();
    await browser.post('/auth/two-factor/verify-totp', { code: totp(secret) });
    expect((await browser.post('/auth/two-factor/disable', { password: 'not the password' })).status).toBe(400);
    expect((await browser.post('/auth/two-factor/disable', { password: PASSWORD })).status).toBe(200);
    const again = aBrowser();
    await signIn(again, email);
    expect((await again.get('/v1/session')).status).toBe(200);
  });
});
