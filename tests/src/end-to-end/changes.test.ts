import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { useBrowser } from '../support/browser.ts';
import { useStartedApp } from '../support/started-app.ts';
import { smallFleet } from './small-fleet.ts';

const browser = useBrowser();
const app = useStartedApp();

test('who changed what is found from the vessel, narrowed, opened to before and after, and taken away', async () => {
  const { organisation, kittiwakeId } = await smallFleet();
  const page = await app.signIn(await browser(), organisation);
  await page.goto(`${app.address()}/vessels/${kittiwakeId}/change`);
  await page.getByLabel('Home port').fill('Wrackholm');
  await page.getByRole('button', { name: 'Keep it so' }).click();
  await page.waitForURL(`**/vessels/${kittiwakeId}`);
  await page.goto(`${app.address()}/vessels/${kittiwakeId}`);
  await page.getByRole('link', { name: 'Who changed what here' }).click();

  const lines = page.locator('table.changes > tbody > tr');
  await lines.first().getByText('changed what is known of a vessel').waitFor();
  expect(await lines.filter({ hasText: 'Petrel' }).count()).toBe(0);
  await lines
    .first()
    .getByRole('button', { name: /^Before and after/ })
    .click();
  const told = page.locator('.differences tbody tr').filter({ hasText: 'Wrackholm' });
  expect(await told.locator('th, td').allTextContents()).toEqual(['home port', '–', 'Wrackholm']);

  await page.getByRole('combobox', { name: 'what: any' }).click();
  await page.getByRole('option', { name: 'facts', exact: true }).click();
  await lines.first().getByText('recorded a fact').waitFor();
  expect(await lines.filter({ hasText: 'changed what is known' }).count()).toBe(0);
  expect(new URL(page.url()).searchParams.get('subject')).toBe('fact');

  const download = page.waitForEvent('download');
  await page.getByRole('link', { name: 'Take it all away' }).click();
  const text = readFileSync(await (await download).path(), 'utf8');
  const rows = text
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line) as { sequence: number });
  expect(rows.map(({ sequence }) => sequence)).toEqual(rows.map((_, index) => index + 1));
  expect(rows.length).toBeGreaterThan(10);
});

test('whoever may not read it is told who may', async () => {
  const { organisation, kittiwakeId } = await smallFleet();
  const page = await app.signIn(await browser(), organisation, 'yard');
  await page.goto(`${app.address()}/vessels/${kittiwakeId}`);
  await page.getByRole('heading', { name: 'Kittiwake' }).waitFor();
  expect(await page.getByRole('link', { name: 'Who changed what here' }).count()).toBe(0);
  await page.goto(`${app.address()}/changes`);
  await page.getByRole('heading', { name: 'This page is not for your role' }).waitFor();
});
