import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { expectNoAxeViolations, useBrowser } from '../support/browser.ts';
import { useStartedApp } from '../support/started-app.ts';
import { smallFleet } from './small-fleet.ts';

const browser = useBrowser();
const app = useStartedApp();

async function somewhere() {
  const fleet = await smallFleet();
  const page = await app.signIn(await browser(), fleet.organisation);
  await page.getByRole('heading', { level: 1 }).waitFor();
  return { page, ...fleet };
}

const options = (page: Page) => page.getByRole('option');
const chosen = (page: Page) => page.locator('[role=option][aria-selected=true]');

describe('finding something', () => {
  test('by keyboard alone: a key opens it, words find a thing, Enter goes there and shows it', async () => {
    const { page, kittiwakeId, raftId } = await somewhere();

    await page.keyboard.press('/');
    await page.keyboard.type('kittiwake lifer');
    await options(page).filter({ hasText: 'Liferaft, 8 persons' }).waitFor();
    expect(await chosen(page).textContent()).toContain('Liferaft, 8 persons');
    await expectNoAxeViolations(page);
    await page.keyboard.press('Enter');

    await page.waitForURL(`**/vessels/${kittiwakeId}?thing=${raftId}`);
    await page.locator('.item-entry.asked', { hasText: 'Liferaft, 8 persons' }).waitFor();
    expect(await page.getByRole('dialog').count()).toBe(0);
  });

  test('the arrow keys choose, the end of the list is the end, and Escape gives the focus back', async () => {
    const { page } = await somewhere();
    const opener = page.getByRole('button', { name: 'Find …' });
    await opener.focus();
    await page.keyboard.press('Control+k');
    await page.keyboard.type('r');
    await options(page).filter({ hasText: 'Rules' }).waitFor();
    await page
      .getByRole('status')
      .filter({ hasText: /\d+ found/ })
      .waitFor();

    const first = await chosen(page).textContent();
    await page.keyboard.press('ArrowDown');
    expect(await chosen(page).textContent()).not.toBe(first);
    await page.keyboard.press('End');
    await page.keyboard.press('ArrowDown');
    expect(await chosen(page).getAttribute('id')).toBe(`found-${(await options(page).count()) - 1}`);
    const box = page.getByRole('combobox', { name: 'Find a vessel' });
    expect(await box.getAttribute('aria-activedescendant')).toBe(await chosen(page).getAttribute('id'));

    await page.keyboard.press('Escape');
    expect(await opener.evaluate((button) => button === document.activeElement)).toBe(true);
  });

  test('a page and a rule are found too, and nothing is said to be nothing', async () => {
    const { page } = await somewhere();

    await page.keyboard.press('/');
    await page.keyboard.type('III/20.8.1');
    await options(page).filter({ hasText: 'SOLAS III/20.8.1' }).first().click();
    await page.waitForURL('**/rules/raft-*');

    await page.keyboard.press('/');
    await page.keyboard.type('zzzz');
    await page.getByText('Nothing answers to these words.').waitFor();
    expect(await options(page).count()).toBe(0);
  });

  test('another organisation’s things are not found', async () => {
    await smallFleet();
    const { page, kittiwakeId } = await somewhere();

    await page.keyboard.press('/');
    await page.keyboard.type('kittiwake');
    await options(page).filter({ hasText: 'Kittiwake' }).first().waitFor();
    await expect.poll(() => options(page).count()).toBe(1);
    await page.keyboard.press('Enter');
    await page.waitForURL(`**/vessels/${kittiwakeId}`);
  });
});

describe('the keys', () => {
  test('are listed under ?, and those of one character can be switched off for good', async () => {
    const { page } = await somewhere();

    await page.keyboard.press('?');
    await page.getByRole('dialog', { name: 'What the keys do' }).waitFor();
    await expectNoAxeViolations(page);
    await page.getByRole('checkbox', { name: /Use \/ and \?/ }).uncheck();
    await page.getByRole('button', { name: 'Close' }).click();

    await page.keyboard.press('/');
    await page.reload();
    await page.getByRole('heading', { level: 1 }).waitFor();
    await page.keyboard.press('/');
    expect(await page.getByRole('dialog').count()).toBe(0);
    await page.keyboard.press('Control+k');
    await page.getByRole('dialog').waitFor();
  });

  test('type in a box what they say', async () => {
    const { page, kittiwakeId, raftId } = await somewhere();
    await page.goto(`${app.address()}/vessels/${kittiwakeId}/record?item=${raftId}&fact=serviced`);

    await page.getByLabel('When').pressSequentially('3/4/2026?');
    expect(await page.getByLabel('When').inputValue()).toBe('3/4/2026?');
    expect(await page.getByRole('dialog').count()).toBe(0);
  });
});
