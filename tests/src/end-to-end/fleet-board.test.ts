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

    await page.locator('a.horizon-target[tabindex="0"]').waitFor();
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
    expect(await row.textContent()).toMatch(/^Kittiwake––1164 d–10 May 2027/);
  });

  test('reaches as far as is asked, and the address keeps it', async () => {
    const { page } = await board();
    await page.locator('a.horizon-target').first().waitFor();

    await page.getByRole('radio', { name: '3 months' }).check({ force: true });
    await expect.poll(() => new URL(page.url()).searchParams.get('months')).toBe('3');
    await page.locator('a.horizon-target').first().waitFor({ state: 'detached' });
    await page.reload();
    await page.getByRole('heading', { name: 'Who needs somebody first' }).waitFor();
    expect(await page.getByRole('radio', { name: '3 months' }).isChecked()).toBe(true);
  });

  test('a mark opens the reasoning of its date', async () => {
    const { page } = await board();

    await page.locator('a.horizon-target[aria-label*="Standing rigging"]').first().click();
    await page.locator('.reasoning').waitFor();
  });

  test('the whole board is one question to the API', async () => {
    const { page } = await board();
    const asked: string[] = [];
    page.on('request', (request) => asked.push(new URL(request.url()).pathname));

    await page.reload();
    await page.locator('a.horizon-target').first().waitFor();
    expect(asked.filter((path) => path === '/v1/fleet')).toHaveLength(1);
    expect(asked.filter((path) => /^\/v1\/(vessels|items|season)/.test(path))).toEqual([]);
  });
});

describe('the season', () => {
  test('is said once, and stands behind the dates', async () => {
    const { page } = await board();
    await page.getByRole('navigation').getByRole('link', { name: 'Season' }).click();
    await page.getByRole('group', { name: 'First day' }).getByLabel('Day').selectOption('31');
    await page.getByRole('button', { name: 'Set the season' }).click();
    await page.getByRole('alert').getByText('is not on every year’s calendar').first().waitFor();

    await page.getByRole('group', { name: 'First day' }).getByLabel('Month').selectOption('May');
    await page.getByRole('button', { name: 'Set the season' }).click();
    await page.getByText('Set: 31 May to 15 October, every year.').waitFor();

    await page.getByRole('navigation').getByRole('link', { name: 'Fleet' }).click();
    await page.getByText('season 2027').first().waitFor();
    // A strip draws itself when it comes near.
    await page.locator('.horizon-strip').first().locator('.season').nth(1).waitFor({ state: 'attached' });
    expect(await page.locator('.horizon-strip').first().locator('.season').count()).toBe(2);
  });

  test('is not for whoever keeps no register: the page says whose it is', async () => {
    const { organisation } = await smallFleet();
    const page = await app.signIn(await browser(), organisation, 'yard');

    await page.goto(`${app.address()}/season`);
    await page.getByText('It is for the owner and the managers.').waitFor();
    expect(await page.getByRole('navigation').getByRole('link', { name: 'Season' }).count()).toBe(0);
    expect(await page.getByRole('button', { name: 'Set the season' }).count()).toBe(0);
  });
});

describe('without a network', () => {
  test('says so and how old what is seen is; asks again by itself once there is one', async () => {
    const { page } = await board();
    await page.locator('a.horizon-target').first().waitFor();

    await page.context().setOffline(true);
    await page.getByText('No network.').waitFor();
    expect(await page.locator('.connection').textContent()).toMatch(/was read at 25 Nov 2026, \d\d:\d\d/);
    await page.getByRole('link', { name: 'Rules' }).click();
    await page.getByText('Not read: there is no network.').waitFor();

    await page.context().setOffline(false);
    await page.getByRole('heading', { name: 'SOLAS', exact: true }).waitFor();
    await page.getByText('No network.').waitFor({ state: 'detached' });
  });
});
