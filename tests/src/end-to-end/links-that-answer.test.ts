/** Links by which an outsider does something: a yard reports its work, an owner answers an estimate. */
import { expect, test } from 'vitest';
import { expectNoAxeViolations, takeScreenshot, useBrowser } from '../support/browser.ts';
import { aJpeg } from '../support/evidence.ts';
import { aFinding } from '../support/findings.ts';
import { useStartedApp, watchedPage } from '../support/started-app.ts';
import { smallFleetWithFindings } from './small-fleet.ts';

const browser = useBrowser();
const app = useStartedApp();

async function lookedAt(page: Awaited<ReturnType<typeof watchedPage>>, name: string): Promise<void> {
  for (const [theme, width] of [
    ['light', 1440],
    ['light', 390],
    ['dark', 1440],
    ['dark', 390],
  ] as const) {
    await page.emulateMedia({ colorScheme: theme });
    await page.setViewportSize({ width, height: 900 });
    await expectNoAxeViolations(page);
    await takeScreenshot(page, name, theme);
  }
}

test('a yard is given work by a link, reports it with a photograph, and the house reads it', async () => {
  const { organisation, hoseId } = await smallFleetWithFindings();
  const page = await app.signIn(await browser(), organisation);
  await page.goto(`${app.address()}/shares`);
  await page.getByLabel('For whom, and what for').fill('Tangle Quay Yard');
  await page.getByLabel('What they may do').selectOption('yard');
  await page.getByRole('button', { name: 'Make the link' }).click();
  await page.getByText('must name the work that it is given').first().waitFor();
  await page.getByLabel(/Gas hose cracked at the cooker/).check();
  await page.getByRole('button', { name: 'Make the link' }).click();
  const link = (await page.locator('.shown-once code').textContent()) ?? '';

  const outside = await watchedPage(await browser());
  await outside.goto(link);
  await outside.getByRole('heading', { name: 'Work that you are given' }).waitFor();
  expect(await outside.locator('body').textContent()).not.toMatch(/Seacock|Liferaft/);
  await outside.getByRole('button', { name: 'Report it done' }).click();
  await outside.getByLabel('What was done').fill('Hose renewed, tested for ten minutes');
  await outside.getByLabel('Who did it').fill('Ines Vale');
  const picture = { name: 'hose.jpg', mimeType: 'image/jpeg', buffer: await aJpeg(3000, 2000) };
  await outside.getByLabel('A photograph of it').setInputFiles([picture]);
  await outside.locator('.small-picture').waitFor();
  await lookedAt(outside, 'shared-work');
  await outside.getByRole('button', { name: 'Send the report' }).click();
  await outside.getByText('Reported done on 2026-11-25; nobody else has looked yet').waitFor();
  expect(await outside.getByRole('button', { name: 'Report it done' }).count()).toBe(0);

  await page.goto(`${app.address()}/findings/${hoseId}`);
  await page.getByText('Done by: Ines Vale').waitFor();
  await page.getByText(/^an outsider, by a link/).waitFor();
  await page.locator('.story .picture-link').waitFor();
});

test('an owner says yes to an estimate in the words that were shown', async () => {
  const { organisation, kittiwakeId } = await smallFleetWithFindings();
  const estimate = { minor: 18_000, currency: 'EUR', author: 'Tangle Quay Yard' };
  const said = { what: 'Stern gland drips', zone: 'stern_gear', estimate, urgency: 'this_season' } as const;
  const gland = await aFinding(organisation.ctx(), kittiwakeId, said);
  const page = await app.signIn(await browser(), organisation);
  await page.goto(`${app.address()}/shares?vessel=${kittiwakeId}`);
  await page.getByLabel('For whom, and what for').fill('her owner');
  await page.getByLabel('What they may do').selectOption('owner');
  await page.getByRole('button', { name: 'Make the link' }).click();
  const link = (await page.locator('.shown-once code').textContent()) ?? '';

  const outside = await watchedPage(await browser());
  await outside.goto(link);
  const offer = outside.getByRole('listitem').filter({ hasText: 'Stern gland drips: put it right, about 180.00 EUR' });
  await offer.getByRole('button', { name: 'Answer' }).click();
  await offer.getByLabel('Your name').fill('Maren Holt');
  await lookedAt(outside, 'shared-offer');
  await offer.getByRole('button', { name: 'Say so' }).click();
  await outside.getByText('Maren Holt said yes on 25 Nov 2026.').waitFor();

  await page.goto(`${app.address()}/findings/${gland.id}`);
  await page.getByText(/^yes, Maren Holt on 25 Nov 2026, to: Stern gland drips/).waitFor();
});
