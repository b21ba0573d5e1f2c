import { describe, expect, test } from 'vitest';
import { useBrowser } from '../support/browser.ts';
import { pools } from '../support/database.ts';
import { mintOrganisation } from '../support/organisation.ts';
import { useStartedApp } from '../support/started-app.ts';
import { smallFleet } from './small-fleet.ts';

const browser = useBrowser();
const app = useStartedApp();

async function dueList() {
  const fleet = await smallFleet();
  const page = await app.signIn(await browser(), fleet.organisation);
  await page.getByRole('link', { name: 'Out of date' }).click();
  await page.getByRole('heading', { name: 'What is out of date' }).waitFor();
  await page.getByRole('button', { name: 'Liferaft, 8 persons' }).first().waitFor();
  return { page, ...fleet };
}

describe('the due list', () => {
  test('says how much is out of date, law and advice apart', async () => {
    const { page } = await dueList();

    const answer = await page.locator('.answer').textContent();
    expect(answer).toMatch(
      /^Two things on two vessels: .*by law or certificate.* no date to go by\. As at 25 Nov 2026\.$/,
    );
  });

  test('puts the longest overdue first, and things without a date apart', async () => {
    const { page } = await dueList();

    const dated = page.locator('.due-table').first();
    expect(await dated.locator('.due-line').first().textContent()).toMatch(
      /Overdue.*64 days.*Liferaft, 8 persons.*Kittiwake.*22 Sep 2026/s,
    );
    const undated = page.getByRole('region', { name: /No date to go by/ });
    await expect.poll(() => undated.getByText('Extinguisher, galley').count()).toBeGreaterThan(0);
    expect(await undated.locator('.due-line', { hasText: 'In date' }).count()).toBe(0);
  });

  test('opens the reasoning of a date with the keyboard alone, and closes it again', async () => {
    const { page } = await dueList();
    const raft = page.getByRole('button', { name: 'Liferaft, 8 persons' }).first();

    await raft.focus();
    await page.keyboard.press('Enter');
    const reasoning = page.locator('.reasoning');
    await reasoning.waitFor();
    expect(await raft.getAttribute('aria-expanded')).toBe('true');
    expect(await reasoning.textContent()).toContain('22 September 2026');
    expect(await reasoning.textContent()).toContain('SOLAS III/20.8.1');
    expect(await reasoning.textContent()).toContain('approved service station');
    expect(await reasoning.locator('del').first().textContent()).toBe('22 Feb 2025');
    expect(await reasoning.textContent()).toContain('struck out: the certificate of another raft');

    await page.keyboard.press('Enter');
    await reasoning.waitFor({ state: 'detached' });
  });

  test('keeps its filters in the address, where they survive a reload', async () => {
    const { page } = await dueList();

    await page.getByRole('combobox', { name: 'vessel: any' }).click();
    await page.getByRole('option', { name: 'Petrel' }).click();
    await page.getByRole('combobox', { name: 'vessel: Petrel' }).waitFor();
    await page.getByRole('button', { name: 'Liferaft, 8 persons' }).first().waitFor({ state: 'detached' });

    await page.reload();
    await page.getByRole('combobox', { name: 'vessel: Petrel' }).waitFor();
    await page.getByRole('button', { name: 'Hand flares' }).first().waitFor();
    expect(await page.getByRole('button', { name: 'Liferaft, 8 persons' }).count()).toBe(0);
  });

  test('a filter is chosen with the keyboard alone', async () => {
    const { page } = await dueList();

    await page.getByRole('combobox', { name: 'standing: any' }).focus();
    await page.keyboard.press('Enter');
    await page.getByRole('option', { name: 'overdue' }).waitFor();
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    await expect.poll(() => new URL(page.url()).searchParams.get('standing')).toBe('overdue');
  });

  test('says so when nothing answers to the filters, and takes them away again', async () => {
    const { page } = await dueList();

    await page.goto(`${app.address()}/due?standing=overdue&scheme=bs5306`);
    await page.getByText('Nothing answers to these words.').waitFor();
    await page.getByRole('button', { name: 'Show everything' }).click();
    await page.getByRole('button', { name: 'Liferaft, 8 persons' }).first().waitFor();
  });

  test('answers as at another day', async () => {
    const { page } = await dueList();

    await page.getByRole('button', { name: 'As at' }).click();
    await page.getByLabel('Another day').fill('1 Sep 2026');
    await page.keyboard.press('Enter');
    await page.getByText('As at 1 Sep 2026.').waitFor();
    await page.locator('.answer', { hasText: 'Nothing on record is out of date' }).waitFor();
    expect(new URL(page.url()).searchParams.get('asAt')).toBe('2026-09-01');
  });

  test('an organisation without vessels is told so, not shown an empty table', async () => {
    const page = await app.signIn(await browser(), await mintOrganisation(pools));

    await page.getByText('No vessel is on the register yet.').waitFor();
    await page.goto(`${app.address()}/due`);
    await page.getByText('Nothing aboard is on record yet.').waitFor();
    expect(await page.locator('table').count()).toBe(0);
  });
});
