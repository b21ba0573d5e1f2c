/** Who works here: inviting, changing, removing; and one's own sessions and account. */
import { describe, expect, test } from 'vitest';
import { expectNoAxeViolations, useBrowser } from '../support/browser.ts';
import { anAddress, aPerson, letterTo, linkOf } from '../support/people.ts';
import { useStartedApp, watchedPage } from '../support/started-app.ts';
import { found, signUp } from './at-the-doors.ts';
import { smallFleet } from './small-fleet.ts';

const browser = useBrowser();
const app = useStartedApp();
const home = () => app.address().replace('127.0.0.1', 'localhost');

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
  await signUp(page, home(), anAddress());
  await page.goto(`${home()}${path}`);
  await page.getByText('The invitation is for another address.').waitFor();
  await page.getByRole('button', { name: 'Sign out' }).click();
  await signUp(page, home(), email);
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
