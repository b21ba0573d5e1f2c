/** People at the doors: signing up and in, letters, a passkey, a second factor, and who works here. */
import { describe, expect, test } from 'vitest';
import { expectNoAxeViolations, useBrowser } from '../support/browser.ts';
import { PASSWORD } from '../support/doors.ts';
import { anAddress, aPerson, letterTo, linkOf } from '../support/people.ts';
import { useStartedApp, watchedPage } from '../support/started-app.ts';
import { totp } from '../support/totp.ts';
import { smallFleet } from './small-fleet.ts';

const browser = useBrowser();
const app = useStartedApp();
type Page = Awaited<ReturnType<typeof watchedPage>>;
/** By name: a passkey is bound to a name and not to a number. */
const home = () => app.address().replace('127.0.0.1', 'localhost');

async function signUp(page: Page, email: string) {
  await page.goto(`${home()}/sign-up`);
  await page.getByLabel('Your name').fill('Ines Falk');
  await page.getByLabel('E-mail address').fill(email);
  await page.getByLabel('Password', { exact: true }).fill(PASSWORD);
  await page.getByRole('button', { name: 'Sign up' }).click();
  await page.getByRole('heading', { name: 'A letter is on its way' }).waitFor();
  await page.goto(`${home()}${letterTo(email).path}`);
  await page.getByRole('button', { name: 'Yes, it is mine' }).click();
  await page.getByRole('heading', { name: 'You belong to no organisation yet' }).waitFor();
}

async function signIn(page: Page, email: string, password = PASSWORD) {
  await page.getByLabel('E-mail address').fill(email);
  await page.getByLabel('Password', { exact: true }).fill(password);
  await page.getByRole('button', { name: 'Sign in', exact: true }).click();
}

async function found(page: Page, name: string) {
  await page.getByLabel('Its name').fill(name);
  await page.getByLabel('Time zone').fill('Europe/Oslo');
  await page.getByRole('button', { name: 'Found it' }).click();
  await page.locator('.organisation').getByText(name).waitFor();
}

async function signOut(page: Page) {
  await page.goto(`${home()}/account`);
  await page.getByRole('button', { name: 'Sign out here' }).click();
  await page.getByRole('heading', { name: 'Who is there?' }).waitFor();
}

describe('signing up', () => {
  test('says every fault at its box, then leads by a letter to a first organisation', async () => {
    const page = await watchedPage(await browser());
    await page.goto(`${home()}/sign-up`);
    await page.getByRole('button', { name: 'Sign up' }).click();
    expect(await page.getByRole('alert').getByRole('listitem').count()).toBe(3);
    await page.getByLabel('Your name').fill('Ines Falk');
    await page.getByLabel('E-mail address').fill(anAddress());
    await page.getByLabel('Password', { exact: true }).fill('passwordpassword');
    await page.getByRole('button', { name: 'Sign up' }).click();
    await page.getByRole('alert').getByText('is among the first that anybody would try').waitFor();
    await expectNoAxeViolations(page);

    await signUp(page, anAddress());
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
  await signUp(page, email);
  await found(page, 'Dotterel Charter');
  await signOut(page);

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
  await signUp(page, anAddress());
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
  await signUp(page, email);
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
    await signOut(page);
    await signIn(page, email);
    await page.getByRole('heading', { name: 'The second factor' }).waitFor();
    await page.getByLabel('Code', { exact: true }).fill(code);
    await page.getByRole('button', { name: 'Go on' }).click();
    await page.getByRole('heading', { name: 'Your account' }).waitFor();
    await page.locator('.organisation').getByText('Gannet Yard').waitFor();
  }
});

test('somebody is invited, accepts with the invited address alone, and goes between two organisations', async () => {
  const { organisation } = await smallFleet();
  const owner = await app.signIn(await browser(), organisation);
  const email = anAddress();
  await owner.goto(`${app.address()}/people`);
  await owner.getByRole('button', { name: 'Send the invitation' }).click();
  await owner.getByRole('alert').getByText('is needed').waitFor();
  await owner.getByLabel('E-mail address').fill(email);
  await owner.getByLabel('Role').selectOption('surveyor');
  await owner.getByLabel('Only these').check();
  await owner.getByLabel('Kittiwake').check();
  await owner.getByRole('button', { name: 'Send the invitation' }).click();
  await owner.getByText(`A letter is on its way to ${email}.`).waitFor();
  const { path } = letterTo(email);

  const page = await watchedPage(await browser());
  await signUp(page, anAddress());
  await page.goto(`${home()}${path}`);
  await page.getByText('The invitation is for another address.').waitFor();
  await page.getByRole('button', { name: 'Sign out' }).click();
  await signUp(page, email);
  await found(page, 'Skua Survey');
  await page.goto(`${home()}${path}`);
  await page.getByText('It is for one of the vessels.').waitFor();
  await expectNoAxeViolations(page);
  await page.getByRole('button', { name: 'Accept' }).click();
  await page.getByRole('link', { name: 'Kittiwake' }).first().waitFor();
  expect(await page.getByRole('link', { name: 'Petrel' }).count()).toBe(0);

  await page.goto(`${home()}/account`);
  await page.getByRole('button', { name: 'Go to Skua Survey' }).click();
  await page.locator('.organisation').getByText('Skua Survey').waitFor();
  expect(await page.getByRole('link', { name: 'Kittiwake' }).count()).toBe(0);
});

describe('who works here', () => {
  test('is changed and removed by who manages people, and only looked at by the others', async () => {
    const { organisation } = await smallFleet();
    const surveyor = await aPerson(organisation, { role: 'surveyor' });
    const owner = await app.signIn(await browser(), organisation);
    await owner.goto(`${app.address()}/people`);
    const line = owner.getByRole('row').filter({ hasText: surveyor.email });
    await line.getByRole('button', { name: /^Change/ }).click();
    await owner.locator('.changing').getByLabel('Role').selectOption('viewer');
    await owner.locator('.changing').getByLabel('Only these').check();
    await owner.getByRole('button', { name: 'Save' }).click();
    await owner.getByRole('alert').getByText('names no vessel yet').waitFor();
    await owner.locator('.changing').getByLabel('Dunlin').check();
    await owner.getByRole('button', { name: 'Save' }).click();
    await line.getByText('Dunlin').waitFor();

    const looking = await watchedPage(await browser());
    await looking.goto(`${app.address()}${await linkOf(organisation, surveyor.id)}`);
    await looking.goto(`${app.address()}/people`);
    await looking.getByRole('heading', { name: 'Who works here' }).waitFor();
    expect(await looking.getByRole('button', { name: /Change|invitation/ }).count()).toBe(0);

    await line.getByRole('button', { name: /^Change/ }).click();
    await owner.getByText('Remove …').click();
    await owner.getByLabel('Why').fill('The season is over.');
    await owner.getByRole('button', { name: 'Remove', exact: true }).click();
    await line.waitFor({ state: 'detached' });
    await looking.goto(`${app.address()}/`);
    await looking.getByRole('heading', { name: 'You belong to no organisation yet' }).waitFor();
  });

  test('does not let the last owner leave', async () => {
    const { organisation } = await smallFleet();
    const page = await app.signIn(await browser(), organisation);
    await page.goto(`${app.address()}/account`);
    await page.getByRole('button', { name: 'Leave', exact: true }).click();
    await page.getByRole('button', { name: 'Leave it for good' }).click();
    await page.getByText(/needs an owner/).waitFor();
    await page.getByRole('button', { name: 'Stay' }).click();
  });
});

test('sessions are listed, the others are ended at once, and an erased account opens nothing', async () => {
  const { organisation } = await smallFleet();
  const person = await aPerson(organisation, { role: 'surveyor' });
  const [here, there] = [await watchedPage(await browser()), await watchedPage(await browser())];
  for (const page of [there, here]) await page.goto(`${app.address()}${await linkOf(organisation, person.id)}`);

  await here.goto(`${app.address()}/account`);
  await here.getByText('this browser').waitFor();
  await here.getByRole('button', { name: 'End all the others' }).click();
  await here.getByRole('button', { name: 'End all the others' }).waitFor({ state: 'detached' });
  await there.reload();
  await there.getByRole('heading', { name: 'Who is there?' }).waitFor();

  await here.getByText('Erase my account …').click();
  await here.getByLabel('Your address, so that it is meant').fill('somebody@else.example');
  await here.getByRole('button', { name: 'Erase my account', exact: true }).click();
  await here.getByRole('alert').getByText('is not your address').waitFor();
  await here.getByLabel('Your address, so that it is meant').fill(person.email);
  await here.getByRole('button', { name: 'Erase my account', exact: true }).click();
  await here.getByRole('heading', { name: 'Who is there?' }).waitFor();
});
