import { expect, test } from 'vitest';
import { useBrowser } from '../support/browser.ts';
import { useStartedApp } from '../support/started-app.ts';
import { smallFleet } from './small-fleet.ts';

const browser = useBrowser();
const app = useStartedApp();

test('a key is made, shown once, used, renewed and revoked', async () => {
  const { organisation } = await smallFleet();
  const page = await app.signIn(await browser(), organisation);
  const statusWith = async (key: string) =>
    (await fetch(`${app.address()}/v1/vessels`, { headers: { authorization: `Bearer ${key}` } })).status;
  const shown = async () => (await page.locator('.shown-once code').textContent()) ?? '';
  await page.goto(`${app.address()}/keys`);
  await page.getByText('No program has a key yet.').waitFor();

  await page.getByRole('button', { name: 'Make the key' }).click();
  await page.getByRole('alert').getByText('is needed').waitFor();
  await page.getByLabel('Which program it is for').fill('tide board');
  await page.getByLabel('Role').selectOption('manager');
  await page.getByLabel('Only this').check();
  await page.getByLabel('record facts and events').check();
  await page.getByRole('button', { name: 'Make the key' }).click();
  await page.getByText('only: read and record facts and events').waitFor();
  const first = await shown();
  expect(await statusWith(first)).toBe(200);

  await page.reload();
  await page.getByRole('button', { name: 'Renew tide board' }).click();
  expect(await page.locator('.shown-once').count()).toBe(0);
  await page.getByRole('button', { name: 'Renew', exact: true }).click();
  await page.getByText('the old text too, until').waitFor();
  const second = await shown();
  expect([await statusWith(first), await statusWith(second)]).toEqual([200, 200]);

  await page.getByRole('button', { name: 'Revoke tide board' }).click();
  await page.getByRole('button', { name: 'Revoke', exact: true }).click();
  await page.getByText('tide board is revoked.').waitFor();
  await page.getByText('revoked 25 Nov 2026').waitFor();
  expect([await statusWith(first), await statusWith(second)]).toEqual([401, 401]);
});

test('whoever may not keep keys is told who may, and sees none', async () => {
  const { organisation } = await smallFleet();
  const page = await app.signIn(await browser(), organisation, 'surveyor');
  await page.goto(`${app.address()}/keys`);
  await page.getByRole('heading', { name: 'This page is not for your role' }).waitFor();
  expect(await page.getByRole('link', { name: 'Keys' }).count()).toBe(0);
});
