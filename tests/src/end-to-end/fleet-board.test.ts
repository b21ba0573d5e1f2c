import { describe, expect, test } from 'vitest';
import { useBrowser } from '../support/browser.ts';
import { useStartedApp } from '../support/started-app.ts';
import { smallFleet } from './small-fleet.ts';

const browser = useBrowser();
const app = useStartedApp();

async function board() {
  const fleet = await smallFleet();
  const page = await app.signIn(await browser(), fleet.organisation);
  await page.getByRole('heading', { name: 'Who needs somebody first' }).waitFor();
  return { page, ...fleet };
}

describe('the horizon', () => {
  test('is one stop for Tab; arrows go from mark to mark, words say what each is, Enter opens the vessel', async () => {
    const { page } = await board();
    const marks = page.locator('a.horizon-target');
    await marks.first().waitFor();

    expect(await marks.evaluateAll((all) => all.filter((mark) => (mark as HTMLElement).tabIndex === 0).length)).toBe(1);
    await page.locator('a.horizon-target[tabindex="0"]').focus();
    await page.keyboard.press('End');
    const focused = page.locator('a.horizon-target:focus');
    expect(await focused.getAttribute('aria-label')).toMatch(/^\w+: \d+ \w{3} 20\d\d, /);
    expect(await page.locator('.mark-words').textContent()).toMatch(/20\d\d/);
    await page.keyboard.press('Escape');
    await page.locator('.mark-words').waitFor({ state: 'detached' });
    await page.keyboard.press('Enter');
    await page.waitForURL(/\/vessels\//);
  });

  test('can be read as a table instead', async () => {
    const { page } = await board();

    await page.getByRole('button', { name: 'As a table' }).click();
    const row = page.getByRole('row', { name: /Kittiwake/ }).first();
    await row.waitFor();
    expect(await row.textContent()).toMatch(/^Kittiwake164 d/);
  });
});
