import type { Account } from '@garboard/contract/organisation/account.ts';
import type { Session } from '@garboard/contract/organisation/session.ts';
import { signedInPerson } from '@garboard/tests/support/api.ts';
import { pools } from '@garboard/tests/support/database.ts';
import { type Answer, aBrowser, OURS, PASSWORD, signedUp, signIn } from '@garboard/tests/support/doors.ts';
import { NOW } from '@garboard/tests/support/organisation.ts';
import { accountsForTests, anAddress, letterTo, outbox } from '@garboard/tests/support/people.ts';
import { describe, expect, it } from 'vitest';
import { files } from '../../../../tests/src/support/files.ts';
import { createApp } from '../app.ts';

describe('signing up', () => {
  it('asks for the address to be verified, and then one is signed in, nowhere yet', async () => {
    const email = anAddress();
    const browser = aBrowser();
    const { status } = await browser.post('/auth/sign-up/email', { email, name: 'Ines Falk', password: PASSWORD });
    expect([status, browser.cookies.size]).toEqual([200, 0]);
    expect((await signIn(browser, email)).status).toBe(403);

    await browser.get(`/auth/verify-email?token=${letterTo(email).path.replace('/verify/', '')}`);

    const { body } = await browser.get<Session>('/v1/session');
    expect(body).toEqual({ person: { id: expect.any(String), name: 'Ines Falk', email }, permissions: [] });
  });

  it('answers the same to an address that has an account, and tells its owner by letter', async () => {
    const { email } = await signedUp();
    const body = { email, name: 'Somebody', password: 'another long password' };
    const known = await aBrowser().post('/auth/sign-up/email', body);
    const unknown = await aBrowser().post('/auth/sign-up/email', { ...body, email: anAddress() });
    const shape = ({ status, text }: Answer<unknown>) => [
      status,
      text.replaceAll(/"[^"]*@example.org"|"[0-9a-f-]{36}"|"\w{32}"|"20[^"]+Z"/g, '…'),
    ];
    expect(shape(known)).toEqual(shape(unknown));
    expect(letterTo(email).subject).toBe('You have an account already');
    expect((await signIn(aBrowser(), email, body.password)).status).toBe(401);
  });

  it.each([
    ['short', 'PASSWORD_TOO_SHORT'],
    ['passwordpassword', 'PASSWORD_COMMON'],
    ['garboard garboard', 'PASSWORD_SAYS_WHO'],
  ])('does not take the password %s', async (password, code) => {
    const email = anAddress();
    const { status, body } = await aBrowser().post('/auth/sign-up/email', { email, name: 'Ines', password });
    expect([status, body.code]).toEqual([400, code]);
    expect(outbox.letters().some(({ to }) => to === email)).toBe(false);
  });

  it('is not offered where no letters are sent', async () => {
    const { settings } = accountsForTests();
    const { openAccounts } = await import('@garboard/accounts/open-accounts.ts');
    const silent = openAccounts({ ...settings, sendMail: null }, () => {});
    const other = createApp({ pools, files, now: () => NOW, log: () => {}, version: '1', accounts: silent });
    const browser = aBrowser({ request: other.request });
    const { status } = await browser.post('/auth/sign-up/email', { email: anAddress(), name: 'I', password: PASSWORD });
    expect(status).toBe(404);
  });
});

describe('signing in', () => {
  it('does not tell a wrong password from an address nobody has', async () => {
    const { email } = await signedUp();
    const wrong = await signIn(aBrowser(), email, 'not the password at all');
    const nobody = await signIn(aBrowser(), anAddress());
    expect([wrong.status, wrong.text]).toEqual([401, nobody.text]);
  });

  it('keeps the session’s secret out of the answer', async () => {
    const { email } = await signedUp();
    const browser = aBrowser();
    const { status, text } = await signIn(browser, email);
    const token = browser.cookies.get('garboard_session')?.split('.')[0] ?? '-';
    expect(status).toBe(200);
    expect(token.length).toBeGreaterThan(20);
    expect(text).not.toContain(token);
  });

  it('is refused from another site, and by a page without an origin', async () => {
    const { email } = await signedUp();
    const body = { email, password: PASSWORD };
    const headers = { 'sec-fetch-site': 'cross-site', origin: 'https://example.com' };
    const { status, body: problem } = await aBrowser().post('/auth/sign-in/email', body, headers);
    expect([status, problem.type]).toEqual([403, '/problems/foreign-origin']);
    expect((await aBrowser().post('/auth/sign-in/email', body, { origin: 'null', 'sec-fetch-site': '' })).status).toBe(
      403,
    );
  });

  it('is refused after too many attempts at one account, known or not, wherever they come from', async () => {
    const limits = { tries: 1e6, letters: 1e6, attemptsAtAccount: { max: 3, windowMs: 60_000 } };
    const strict = createApp({
      pools,
      files,
      now: () => NOW,
      log: () => {},
      version: '1',
      accounts: accountsForTests(undefined, limits),
    });
    const { email } = await signedUp();
    for (const address of [email, anAddress()]) {
      const statuses: number[] = [];
      for (let n = 0; n < 4; n += 1)
        statuses.push((await signIn(aBrowser(strict), address, `wrong password ${n} here`)).status);
      expect(statuses).toEqual([401, 401, 401, 429]);
    }
    expect((await signIn(aBrowser(strict), email)).status).toBe(429);
    await pools.accounts.query(`update "rateLimit" set "lastRequest" = 0 where key like 'account:%'`);
    expect((await signIn(aBrowser(strict), email)).status).toBe(200);
    expect((await signIn(aBrowser(strict), email, 'wrong again, dear me')).status).toBe(401);
  });
});

describe('the doors', () => {
  it('are few: what else the library could do is not there', async () => {
    const { browser } = await signedUp();
    for (const path of [
      '/auth/get-session',
      '/auth/list-sessions',
      '/auth/ok',
      '/auth/error',
      '/auth/passkey/list-user-passkeys',
    ])
      expect((await browser.get(path)).status, path).toBe(404);
    for (const path of [
      '/auth/sign-out',
      '/auth/update-user',
      '/auth/delete-user',
      '/auth/change-email',
      '/auth/open-session',
    ])
      expect((await browser.post(path)).status, path).toBe(404);
  });

  it('take no large body, carry our headers, and are kept nowhere', async () => {
    const large = await aBrowser().post('/auth/sign-in/email', { email: 'x'.repeat(20_000), password: '' });
    expect(large.status).toBe(413);
    const { headers } = await signIn(aBrowser(), anAddress());
    expect(headers.get('cache-control')).toContain('no-store');
    expect(headers.get('content-security-policy')).toContain("default-src 'self'");
  });

  it('answer a bad body with a refusal, not a fault', async () => {
    for (const body of [{}, { email: 5, password: [] }, { email: 'x', password: null }])
      for (const path of [
        '/auth/sign-in/email',
        '/auth/sign-up/email',
        '/auth/reset-password',
        '/auth/request-password-reset',
      ])
        expect((await aBrowser().post(path, body)).status, `${path} ${JSON.stringify(body)}`).toBe(400);
  });
});

describe('where a session begins', () => {
  it('is where the person was last, whichever they founded first, and nowhere once they belong to none', async () => {
    const { email, browser } = await signedUp();
    const found = async (name: string) =>
      (await browser.post('/v1/organisations', { name, timeZone: 'Europe/Oslo' })).body.id as string;
    const [first, second] = [await found('Ruff Sailing'), await found('Knot Sailing')];
    const beginsAt = async () => {
      const another = aBrowser();
      await signIn(another, email);
      return (await another.get<Session>('/v1/session')).body.organisation?.id;
    };
    expect(await beginsAt()).toBe(second);
    await browser.post('/v1/session/organisation', { organisationId: first });
    expect(await beginsAt()).toBe(first);
    await pools.owner
      .updateTable('membership')
      .set({ ended_at: NOW })
      .where('organisation_id', 'in', [first, second])
      .execute();
    expect(await beginsAt()).toBeUndefined();
  });
});

describe('a forgotten password', () => {
  it('is set anew by a link that works once; sessions elsewhere are over', async () => {
    const { email, browser } = await signedUp();
    const asked = await aBrowser().post('/auth/request-password-reset', { email });
    const nobody = await aBrowser().post('/auth/request-password-reset', { email: anAddress() });
    expect([asked.status, asked.text]).toEqual([200, nobody.text]);
    const token = letterTo(email).path.replace('/new-password/', '');
    const newPassword = 'eight seas and a tern';
    expect((await aBrowser().post('/auth/reset-password', { token, newPassword: 'short' })).status).toBe(400);

    expect((await aBrowser().post('/auth/reset-password', { token, newPassword })).status).toBe(200);

    expect((await aBrowser().post('/auth/reset-password', { token, newPassword })).status).toBe(400);
    expect((await browser.get('/v1/session')).status).toBe(401);
    expect((await signIn(aBrowser(), email)).status).toBe(401);
    expect((await signIn(aBrowser(), email, newPassword)).status).toBe(200);
  });

  it('leaves no token in the database that would open anything', async () => {
    const { email } = await signedUp();
    await aBrowser().post('/auth/request-password-reset', { email });
    const token = letterTo(email).path.replace('/new-password/', '');
    const { rows } = await pools.accounts.query('select identifier from verification');
    expect(rows.length).toBeGreaterThan(0);
    expect(JSON.stringify(rows)).not.toContain(token);
  });
});

describe('a password', () => {
  it('is changed by who knows it', async () => {
    const { email, browser } = await signedUp();
    const newPassword = 'eight seas and a tern';
    const wrong = { currentPassword: 'not it, I am afraid', newPassword };
    expect((await browser.post('/auth/change-password', wrong)).status).toBe(400);
    const right = { currentPassword: PASSWORD, newPassword, revokeOtherSessions: true };
    expect((await browser.post('/auth/change-password', right)).status).toBe(200);
    expect((await signIn(aBrowser(), email, newPassword)).status).toBe(200);
  });

  it('is set for the first time by who came by a link, and only then', async () => {
    const me = await signedInPerson();
    const browser = aBrowser();
    browser.cookies.set('garboard_session', me.cookie.replace('garboard_session=', ''));
    expect((await browser.get<Account>('/v1/account')).body.hasPassword).toBe(false);
    expect((await browser.post('/auth/set-password', { newPassword: 'short' })).status).toBe(400);
    expect((await aBrowser().post('/auth/set-password', { newPassword: PASSWORD })).status).toBe(401);
    expect((await browser.post('/auth/set-password', { newPassword: PASSWORD })).status).toBe(200);
    expect((await browser.post('/auth/set-password', { newPassword: PASSWORD })).status).toBe(400);
    expect((await signIn(aBrowser(), me.person.email)).status).toBe(200);
  });
});

describe('attempts from one address', () => {
  it('are few at a door, whatever the account', async () => {
    const limits = { tries: 3, letters: 2, attemptsAtAccount: { max: 1e6, windowMs: 1000 } };
    const accounts = accountsForTests(undefined, limits);
    const from = (address: string, path: string, body: object) =>
      accounts.handle(
        new Request(`http://localhost${path}`, {
          method: 'POST',
          headers: { ...OURS, 'content-type': 'application/json', 'x-garboard-address': '198.51.100.99' },
          body: JSON.stringify(body),
        }),
        address,
      );
    const statuses = async (address: string, path: string, times: number) => {
      const seen: (number | undefined)[] = [];
      for (let n = 0; n < times; n += 1)
        seen.push((await from(address, path, { email: anAddress(), password: 'x' }))?.status);
      return seen;
    };
    const [one, two] = [anIp(), anIp()];
    expect(await statuses(one, '/auth/sign-in/email', 4)).toEqual([401, 401, 401, 429]);
    expect(await statuses(two, '/auth/sign-in/email', 1)).toEqual([401]);
    expect(await statuses(two, '/auth/request-password-reset', 3)).toEqual([200, 200, 429]);
  });
});

const anIp = () => `203.0.113.${Math.floor(Math.random() * 254) + 1}`;
