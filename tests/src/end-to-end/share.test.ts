import { expect, test } from 'vitest';
import { expectNoAxeViolations, takeScreenshot, useBrowser } from '../support/browser.ts';
import { useStartedApp, watchedPage } from '../support/started-app.ts';
import { smallFleet } from './small-fleet.ts';

const browser = useBrowser();
const app = useStartedApp();

test('a vessel is shown to an outsider from her page, looked at without an account, and taken back', async () => {
  const { organisation, kittiwakeId } = await smallFleet();
  const page = await app.signIn(await browser(), organisation);
  await page.goto(`${app.address()}/vessels/${kittiwakeId}`);
  await page.getByRole('link', { name: 'Show her to an outsider' }).click();
  await page.getByRole('button', { name: 'Make the link' }).click();
  await page.getByRole('alert').getByText('is needed').waitFor();
  await page.getByLabel('For whom, and what for').fill('insurer, for the renewal');
  expect(await page.getByLabel('Kittiwake').isChecked()).toBe(true);
  await page.getByRole('button', { name: 'Make the link' }).click();
  const link = (await page.locator('.shown-once code').textContent()) ?? '';

  const asked: string[] = [];
  const outside = await watchedPage(await browser());
  outside.on('request', (request) => asked.push(request.url(), JSON.stringify(request.headers())));
  await outside.goto(link);
  await outside.getByRole('heading', { name: 'What is due aboard Kittiwake' }).waitFor();
  await outside.getByText('for insurer, for the renewal').waitFor();
  await outside.getByRole('row').filter({ hasText: 'Liferaft, 8 persons' }).first().waitFor();
  expect(await outside.locator('body').textContent()).not.toMatch(/Petrel|Dunlin|MABC2/);
  expect(asked.join('\n')).not.toContain('gbs_');
  for (const [theme, width] of [
    ['light', 1440],
    ['light', 390],
    ['dark', 1440],
    ['dark', 390],
  ] as const) {
    await outside.emulateMedia({ colorScheme: theme });
    await outside.setViewportSize({ width, height: 900 });
    await expectNoAxeViolations(outside);
    await takeScreenshot(outside, 'shared-vessel', theme);
  }

  await page.reload();
  await page.getByText(/^once, last/).waitFor();
  await page.getByRole('button', { name: /^Revoke the link/ }).click();
  await page.getByText('The link for insurer, for the renewal shows nothing any more.').waitFor();
  await outside.reload();
  await outside.getByRole('heading', { name: 'This link shows nothing any more' }).waitFor();
});
