import { describe, expect, test } from 'vitest';
import { PHONE, useBrowser } from '../support/browser.ts';
import { useStartedApp } from '../support/started-app.ts';
import { smallFleet } from './small-fleet.ts';

const browser = useBrowser();
const app = useStartedApp();

describe('the navigation', () => {
  test('leads to every page, says where one is, and tells what is out of date in words too', async () => {
    const { organisation } = await smallFleet();
    const page = await app.signIn(await browser(), organisation);
    const pages = page.getByRole('navigation', { name: 'Pages' });

    await pages.getByRole('link', { name: 'Out of date 2 out of date' }).waitFor();
    for (const [name, heading] of [
      ['Out of date', 'What is out of date'],
      ['Vessels', 'Which vessels are kept here'],
      ['Rules', 'Which rules a date can come from'],
      ['Fleet', 'Who needs somebody first'],
    ] as const) {
      await pages.getByRole('link', { name }).click();
      await page.getByRole('heading', { level: 1, name: heading }).waitFor();
      expect(await pages.locator('[aria-current]').textContent()).toContain(name);
    }
  });

  test('stands under the thumb on a phone, and gives way to what was chosen', async () => {
    const { organisation } = await smallFleet();
    const page = await app.signIn(await browser({ viewport: PHONE }), organisation);
    const bar = page.getByRole('navigation', { name: 'Pages' });

    const box = await bar.boundingBox();
    expect((box?.y ?? 0) + (box?.height ?? 0)).toBeCloseTo(PHONE.height, 0);
    expect(await bar.getByRole('link', { name: 'Rules' }).isVisible()).toBe(false);
    await bar.getByRole('button', { name: 'More' }).click();
    await bar.getByRole('link', { name: 'Rules' }).click();
    await page.getByRole('heading', { level: 1, name: 'Which rules' }).waitFor();
    expect(await bar.getByRole('link', { name: 'Rules' }).isVisible()).toBe(false);
  });

  test('a link kept from when the due list was the first page still opens the due list', async () => {
    const { organisation } = await smallFleet();
    const page = await app.signIn(await browser(), organisation);

    await page.goto(`${app.address()}/?standing=overdue&asAt=2026-12-01`);
    await page.getByRole('heading', { name: 'What is out of date' }).waitFor();
    const address = new URL(page.url());
    expect(address.pathname + address.search).toBe('/due?standing=overdue&asAt=2026-12-01');
  });
});
