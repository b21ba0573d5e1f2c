import { expect, test } from 'vitest';
import { useBrowser } from '../support/browser.ts';
import { useStartedApp, watchedPage } from '../support/started-app.ts';
import { smallFleet } from './small-fleet.ts';

const browser = useBrowser();
const app = useStartedApp();

test('whoever is not signed in is told where the door is, and sees nothing of any fleet', async () => {
  const { kittiwakeId } = await smallFleet();
  const page = await watchedPage(await browser());

  await page.goto(`${app.address()}/vessels/${kittiwakeId}`);
  await page.getByRole('heading', { name: 'Who is there?' }).waitFor();
  expect(await page.locator('body').textContent()).not.toContain('Kittiwake');
});

test('another organisation’s vessel is not here, like one that never was', async () => {
  const [ours, theirs] = [await smallFleet(), await smallFleet()];
  const page = await app.signIn(await browser(), ours.organisation);

  for (const id of [theirs.kittiwakeId, '0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a']) {
    await page.goto(`${app.address()}/vessels/${id}`);
    await page.getByRole('heading', { name: 'Nothing is kept under this address' }).waitFor();
  }
});

test('night is kept, over the device’s own choice, from the first paint on', async () => {
  const { organisation } = await smallFleet();
  const page = await app.signIn(await browser({ colorScheme: 'light' }), organisation);
  const paper = () => page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
  const day = await paper();

  await page.getByText('night', { exact: true }).click();
  const night = await paper();
  expect(night).not.toBe(day);
  await page.reload({ waitUntil: 'commit' });
  await page.locator('#root').waitFor({ state: 'attached' });
  expect(await paper()).toBe(night);

  await page.getByText('as the device', { exact: true }).click();
  await expect.poll(paper).toBe(day);
});
