/** Photographs in the browser: chosen, sent, kept, shown side by side, and said to be missing where they are. */
import { blobName } from '@garboard/blobs/evidence/names.ts';
import { expect, test } from 'vitest';
import { useBrowser } from '../support/browser.ts';
import { aJpeg, aPhotograph, sha256Of } from '../support/evidence.ts';
import { files } from '../support/files.ts';
import { useStartedApp } from '../support/started-app.ts';
import { smallFleetWithFindings } from './small-fleet.ts';

const browser = useBrowser();
const app = useStartedApp();

const chosen = async (name: string) => ({ name, mimeType: 'image/jpeg', buffer: await aJpeg(900, 700) });

test('the yard reports work with a photograph of it, which stands beside the one of the finding', async () => {
  const { organisation, kittiwakeId, hoseId } = await smallFleetWithFindings();
  const page = await app.signIn(await browser(), organisation, 'yard');
  await page.goto(`${app.address()}/findings/${hoseId}?do=look`);
  await page.getByLabel('Photographs or a PDF').setInputFiles([await chosen('before.jpg')]);
  await page.locator('.picture-field .picture').waitFor();
  await page.getByRole('button', { name: 'Write it down' }).click();
  await page.locator('.story .picture-link').waitFor();
  expect(await page.getByText('Before and after').count()).toBe(0);

  await page.getByRole('button', { name: 'Report it done' }).click();
  await page.getByLabel('What was done').fill('Hose renewed');
  await page.getByLabel('Photographs or a PDF').setInputFiles([await chosen('after.jpg'), await chosen('date.jpg')]);
  await page.locator('.picture-field .picture').nth(1).waitFor();
  await page.getByRole('button', { name: 'Leave it out' }).first().click();
  await page.getByRole('button', { name: 'Write it down' }).click();
  await page.getByRole('heading', { name: 'Before and after' }).waitFor();
  await page.locator('.pair .picture-link').nth(1).click();
  await page.getByText('Fingerprint (SHA-256)').waitFor();
  expect(await page.getByRole('link', { name: 'Take it as it came' }).count(), 'the yard takes no originals').toBe(0);

  const shown = () => page.locator('img.picture').evaluate((image: HTMLImageElement) => image.naturalWidth);
  await expect.poll(shown).toBe(900);
  await page.getByRole('link', { name: 'All photographs of Kittiwake' }).click();
  await page.waitForURL(`**/vessels/${kittiwakeId}/photographs`);
  // What was left out is kept too, but named by no entry.
  await expect.poll(() => page.locator('.file').count()).toBe(3);
});

test('what is no photograph is refused in words, and the rest goes on', async () => {
  const { organisation, kittiwakeId } = await smallFleetWithFindings();
  const page = await app.signIn(await browser(), organisation);
  await page.goto(`${app.address()}/vessels/${kittiwakeId}/photographs`);
  await page.getByText('No photograph of her has been kept yet.').waitFor();
  await page.getByLabel('Where aboard').selectOption('cockpit');
  await page.getByLabel('What they show').fill('Drain to port');
  const page1 = { name: 'evil.jpg', mimeType: 'image/jpeg', buffer: Buffer.from('<script>alert(1)</script>') };
  await page.getByLabel('Photographs or a PDF').setInputFiles([page1, await chosen('drain.jpg')]);
  await page.getByText('evil.jpg is no photograph').waitFor();
  await page.locator('.file').getByText('Drain to port').waitFor();
});

test('a cut in the middle is gone on from, without the person doing anything', async () => {
  const { organisation, kittiwakeId } = await smallFleetWithFindings();
  const page = await app.signIn(await browser(), organisation);
  await page.goto(`${app.address()}/vessels/${kittiwakeId}/photographs`);
  let cuts = 0;
  // The piece arrives; its answer is lost on the way back.
  await page.route('**/v1/uploads/*', async (route) => {
    if (route.request().method() !== 'PATCH' || cuts > 0) return route.continue();
    cuts += 1;
    await route.fetch();
    await route.abort('connectionreset');
  });
  const big = { name: 'big.jpg', mimeType: 'image/jpeg', buffer: await aJpeg(2600, 2000) };
  expect(big.buffer.length).toBeGreaterThan(600_000);
  await page.getByLabel('Photographs or a PDF').setInputFiles([big]);
  await page.locator('.file .picture').waitFor();
  expect(cuts).toBe(1);
});

test('one survey point over the visits stands side by side; a file that is gone is said to be', async () => {
  const { organisation, kittiwakeId } = await smallFleetWithFindings();
  const ctx = organisation.ctx();
  const at = { zone: 'fire_gear', point: 'extinguisher, companionway' };
  const gone = await aJpeg();
  await aPhotograph(ctx, kittiwakeId, { ...at, takenOn: '2025-11-01' }, gone);
  await aPhotograph(ctx, kittiwakeId, { ...at, takenOn: '2026-11-01' });
  for (const part of ['original', 'large', 'small'] as const)
    await files.store.remove(blobName(organisation.id, sha256Of(gone), part));
  const page = await app.signIn(await browser(), organisation);
  await page.goto(`${app.address()}/vessels/${kittiwakeId}/photographs`);
  const strip = page.getByRole('list', { name: 'Extinguisher, companionway: Over the visits' });
  await strip.getByText('The file is not in the store any more.').waitFor();
  expect(await strip.locator('time').allTextContents()).toEqual(['1 Nov 2025', '1 Nov 2026']);
});
