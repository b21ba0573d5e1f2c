/** A surveyor types a whole visit up at the desk without touching the mouse, and it is sealed. */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { useBrowser } from '../support/browser.ts';
import { pools } from '../support/database.ts';
import { aFinding } from '../support/findings.ts';
import { mintOrganisation } from '../support/organisation.ts';
import { useStartedApp } from '../support/started-app.ts';
import { aVessel } from '../support/vessels.ts';
import { aVisit } from '../support/visits.ts';
import { smallFleetWithFindings } from './small-fleet.ts';

const browser = useBrowser();
const app = useStartedApp();
const STOPS = 23;

/** The line that the keys are at. */
const lineAtKeys = (page: Page) =>
  page.evaluate(() => document.activeElement?.closest('form')?.getAttribute('aria-label') ?? null);

/** Types box by box and writes the line; the keys are then at the next one, which is empty. */
async function write(page: Page, ...boxes: string[]): Promise<void> {
  for (const [index, words] of boxes.entries()) {
    if (index > 0) await page.keyboard.press('Tab');
    await page.keyboard.type(words);
  }
  await page.keyboard.press('Enter');
  await page.waitForFunction(() => {
    const { activeElement } = document;
    if (activeElement?.hasAttribute('data-finish')) return true;
    const line = activeElement?.closest('form');
    return (
      activeElement?.tagName === 'SELECT' &&
      line?.querySelector('input')?.value === '' &&
      !line?.querySelector(':disabled')
    );
  });
}

test('forty lines in one sitting, by the keys alone', async () => {
  const organisation = await mintOrganisation(pools);
  const ctx = organisation.ctx();
  const vessel = await aVessel(ctx, [], 'Kittiwake');
  await aFinding(ctx, vessel.id, { zone: 'papers', what: 'Certificate not aboard' }, '2026-05-01');
  const visit = await aVisit(ctx, vessel.id, { startedOn: '2026-11-24' });
  const page = await app.signIn(await browser(), organisation, 'surveyor');
  await page.goto(`${app.address()}/visits/${visit.id}`);
  await page.getByText('Twenty-four answers are still missing.').waitFor();
  await page.locator('[data-line] select').first().focus();

  expect(await lineAtKeys(page)).toBe('Seen of: Certificate not aboard');
  await write(page, 'worse', 'Ran out in June');
  await page.getByText('Twenty-three answers are still missing.').waitFor();
  let lines = 1;
  for (let stop = 0; stop < STOPS; stop += 1) {
    const label = await lineAtKeys(page);
    if (stop % 3 === 0) {
      await write(page, 'something is', `Crack ${stop}`);
      expect(await lineAtKeys(page), 'another of its sort').toBe(label);
      await write(page, 'something is', `Rust ${stop}`);
      lines += 2;
    }
    await write(page, 'sound', stop % 3 === 0 ? 'else sound' : '');
    lines += 1;
  }

  expect(lines).toBe(40);
  await page.getByText('Everything is answered.').waitFor();
  const complete = page.getByRole('button', { name: 'Complete and seal' });
  expect(await complete.evaluate((button) => button === document.activeElement), 'the keys are there').toBe(true);
  await page.keyboard.press('Enter');
  await page.getByText('Completed on 25 Nov 2026 and sealed: nothing of it changes.').waitFor();
  await page.getByRole('link', { name: 'Findings' }).press('Enter');
  await page.getByText('Seventeen findings open; none is to be dealt with before use.').waitFor();
});

test('the route is changed to how the house walks, and the next visit walks it', async () => {
  const { organisation, kittiwakeId } = await smallFleetWithFindings();
  const page = await app.signIn(await browser(), organisation, 'surveyor');
  await page.goto(`${app.address()}/visits`);
  await page.getByRole('link', { name: 'Change the routes' }).click();
  await page.getByRole('button', { name: 'Gas locker: one up' }).press('Enter');
  await page.getByLabel('Another place').fill('Trailer');
  await page.getByRole('button', { name: 'Add it' }).press('Enter');
  await page.getByRole('button', { name: 'Walk it like this' }).press('Enter');
  await page.getByText('The route is set.').waitFor();

  await page.goto(`${app.address()}/vessels/${kittiwakeId}/visit`);
  await page.getByRole('button', { name: 'Start' }).click();
  await page.waitForURL('**/visits/*');
  await page.locator('.stop h3').first().waitFor();
  const places = await page.locator('.stop h3').allTextContents();
  const names = places.map((text) => text.trim());
  expect(names.at(-1)).toBe('Trailer');
  expect(names.indexOf('Gas locker')).toBeLessThan(names.indexOf('Cockpit and drains'));
});
