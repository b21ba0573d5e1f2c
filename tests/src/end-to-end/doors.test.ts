/** People at the doors: signing up and in, letters, a passkey, a second factor. */
import { describe, expect, test } from 'vitest';
import { expectNoAxeViolations, useBrowser } from '../support/browser.ts';
import { PASSWORD } from '../support/doors.ts';
import { anAddress, letterTo } from '../support/people.ts';
import { useStartedApp, watchedPage } from '../support/started-app.ts';
import { totp } from '../support/totp.ts';
import { found, signIn, signOut, signUp } from './at-the-doors.ts';

const browser = useBrowser();
const app = useStartedApp();
const home = () => app.address().replace('127.0.0.1', 'localhost');

describe('signing up', () => {
  test('says every fault at its box, then leads by a letter to a first organisation', async () => {
    const page = await watchedPage(await browser());
    await page.goto(`${home()}/sign-up`);
    await page.getByRole('button', { name: 'Sign up' }).click();
    await expect.poll(() => page.getByRole('alert').getByRole('listitem').count()).toBe(3);
    await page.getByLabel('Your name').fill('Ines Falk');
    await page.getByLabel('E-mail address').fill(anAddress());
    await page.getByLabel('Password', { exact: true }).fill('passwordpassword');
    await page.getByRole('button', { name: 'Sign up' }).click();
    await page.getByRole('alert').getByText('is among the first that anybody would try').waitFor();
    await expectNoAxeViolations(page);

    await signUp(page, home(), anAddress());
    await expectNoAxeViolations(page);
    await found(page, 'Curlew Sailing School');
  });

  test('shows the password when asked, and says nothing of whether an address has an account', async () => {
    const page = await watchedPage(await browser());
    await page.goto(`${home()}/forgotten`);
    await page.getByLabel('E-mail address').fill(anAddress());
    await page.getByRole('button', { name: 'Send the link' }).click();
    await page.getByText('If there is an account, a letter is on its way').waitFor();

    await page.goto(`${home()}/`);
    await page.getByLabel('Password', { exact: true }).fill('seen');
    await page.getByRole('button', { name: 'show: Password' }).click();
    expect(await page.getByLabel('Password', { exact: true }).getAttribute('type')).toBe('text');
    await signIn(page, anAddress(), 'no such password here');
    await page.getByText('There is no account with this address and this password.').waitFor();
  });
});

test('a forgotten password is set anew by a letter, and leads to the page that was asked for', async () => {
  const page = await watchedPage(await browser());
  const email = anAddress();
  await signUp(page, home(), email);
  await found(page, 'Dotterel Charter');
  await signOut(page, home());

  await page.goto(`${home()}/forgotten`);
  await page.getByLabel('E-mail address').fill(email);
  await page.getByRole('button', { name: 'Send the link' }).click();
  await page.getByText('If there is an account').waitFor();
  await page.goto(`${home()}${letterTo(email).path}`);
  await page.getByLabel('New password', { exact: true }).fill('another seven gulls at sea');
  await page.getByRole('button', { name: 'Set it' }).click();
  await page.getByText('The password is set.').waitFor();

  await page.goto(`${home()}/people`);
  await signIn(page, email, 'another seven gulls at sea');
  await page.getByRole('heading', { name: 'Who works here' }).waitFor();
});

test('a passkey is added, opens the door without a password, and is taken away', async () => {
  const page = await watchedPage(await browser());
  const devtools = await page.context().newCDPSession(page);
  await devtools.send('WebAuthn.enable');
  await devtools.send('WebAuthn.addVirtualAuthenticator', {
    options: {
      protocol: 'ctap2',
      transport: 'internal',
      hasResidentKey: true,
      hasUserVerification: true,
      isUserVerified: true,
    },
  });
  await signUp(page, home(), anAddress());
  await found(page, 'Fulmar Yard');
  await page.goto(`${home()}/account`);
  await page.getByText('Add a passkey').first().click();
  await page.getByLabel('What it is called').fill('phone');
  await page.getByRole('button', { name: 'Add a passkey' }).click();
  await page.getByRole('button', { name: 'Remove the passkey phone' }).waitFor();

  await page.getByRole('button', { name: 'Sign out here' }).click();
  await page.getByRole('button', { name: 'Use a passkey' }).click();
  await page.getByRole('button', { name: 'Remove the passkey phone' }).click();
  await page.getByText('None yet. A passkey lives').waitFor();
});

test('a second factor is set up from its square code, asked for, and stood in for by a recovery code', async () => {
  const page = await watchedPage(await browser());
  const email = anAddress();
  await signUp(page, home(), email);
  await found(page, 'Gannet Yard');
  await page.goto(`${home()}/account`);
  await page.getByText('Turn it on').first().click();
  await page.getByRole('textbox', { name: 'Password', exact: true }).fill(PASSWORD);
  await page.getByRole('button', { name: 'Turn it on' }).click();
  await page.getByRole('img', { name: /^Square code/ }).waitFor();
  const secret = (await page.locator('.square-code + p code').textContent()) ?? '';
  await page.getByLabel('Code', { exact: true }).fill('000000');
  await page.getByRole('button', { name: 'Turn it on' }).click();
  await page.getByText('is not the code of this moment').first().waitFor();
  await page.getByLabel('Code', { exact: true }).fill(totp(secret.replaceAll(' ', '')));
  await page.getByRole('button', { name: 'Turn it on' }).click();
  const recovery = (await page.locator('.recovery-codes code').first().textContent()) ?? '';
  await page.getByRole('button', { name: 'I have kept them' }).click();
  await page.getByText('On: after the password').waitFor();

  for (const code of [totp(secret.replaceAll(' ', '')), recovery]) {
    await signOut(page, home());
    await signIn(page, email);
    await page.getByRole('heading', { name: 'The second factor' }).waitFor();
    await page.getByLabel('Code', { exact: true }).fill(code);
    await page.getByRole('button', { name: 'Go on' }).click();
    await page.getByRole('heading', { name: 'Your account' }).waitFor();
    await page.locator('.organisation').getByText('Gannet Yard').waitFor();
  }
});
