import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { useBrowser } from '../support/browser.ts';
import { useStartedApp } from '../support/started-app.ts';
import { type SmallFleet, smallFleet } from './small-fleet.ts';

const browser = useBrowser();
const app = useStartedApp();

async function signedIn(): Promise<SmallFleet & { page: Page }> {
  const fleet = await smallFleet();
  const page = await app.signIn(await browser(), fleet.organisation);
  await page.goto(`${app.address()}/due`);
  return { ...fleet, page };
}

async function openForm(search = ''): Promise<SmallFleet & { page: Page }> {
  const all = await signedIn();
  await all.page.goto(`${app.address()}/vessels/${all.kittiwakeId}/record?item=${all.raftId}${search}`);
  await all.page.getByLabel('What happened').waitFor();
  return all;
}

const typed = (page: Page, name: string) => page.getByLabel(name, { exact: true }).inputValue();

describe('recording a fact', () => {
  test('a service moves the date at once, and the list agrees', async () => {
    const { page } = await signedIn();
    await page.getByRole('button', { name: 'Liferaft, 8 persons' }).first().click();
    await page.getByRole('link', { name: 'Record a service' }).click();

    await page.getByLabel('When').fill('20 Nov 2026');
    await page.getByText('Read as 20 November 2026.').waitFor();
    await page.getByLabel('In what capacity').selectOption('approved liferaft service station');
    await page.getByLabel('What shows it').selectOption('a certificate');
    await page.getByRole('button', { name: 'Record', exact: true }).click();

    await page.getByRole('heading', { name: 'Recorded' }).waitFor();
    const change = await page.locator('.changes .moved').first().textContent();
    expect(change).toMatch(/22 Sep 2026.*→.*20 Nov 2027.*In date/s);

    await page.getByRole('link', { name: /^Out of date/ }).click();
    await page.locator('.answer', { hasText: 'One thing on one vessel' }).waitFor();
    const line = page.locator('.due-line', { hasText: 'Liferaft, 8 persons' }).filter({ hasText: 'serviced' }).first();
    await line.filter({ hasText: '20 Nov 2027' }).waitFor();
    expect(await line.textContent()).toContain('In date');
  });

  test('an owner’s look is kept and resets nothing, and the page says why', async () => {
    const { page } = await openForm('&fact=serviced');
    await page.getByLabel('When').fill('20 Nov 2026');
    await page.getByLabel('In what capacity').selectOption('owner or skipper');
    await page.getByRole('button', { name: 'Record', exact: true }).click();

    await page.getByRole('heading', { name: 'Recorded' }).waitFor();
    expect(await page.locator('.changes .moved').count()).toBe(0);
    const unchanged = await page.locator('.changes .unchanged').first().textContent();
    expect(unchanged).toContain('22 Sep 2026');
    expect(unchanged).toContain('done by the owner or skipper; what counts is');
  });

  test('a refused fact shows each fault at its box, and nothing typed is lost', async () => {
    const { page } = await openForm('&fact=serviced');
    await page.getByLabel('When').fill('20 Nov 2027');
    await page.getByLabel('Name').fill('Skerry Raft Service');
    await page.getByLabel('Certificate number').fill('7'.repeat(200));
    await page.getByLabel('Note').fill('packed water replaced');
    await page.getByRole('button', { name: 'Record', exact: true }).click();

    const summary = page.getByRole('alert');
    await summary.getByText('Not recorded yet').waitFor();
    expect(await summary.evaluate((box) => box === document.activeElement)).toBe(true);
    const certificate = page.getByLabel('Certificate number');
    expect(await certificate.getAttribute('aria-invalid')).toBe('true');
    const words = await certificate.getAttribute('aria-describedby');
    expect(await page.locator(`[id="${words}"]`).textContent()).toMatch(/160/);
    expect(await typed(page, 'When')).toBe('20 Nov 2027');
    expect(await typed(page, 'Name')).toBe('Skerry Raft Service');
    expect(await typed(page, 'Note')).toBe('packed water replaced');

    await certificate.fill('5121');
    await page.getByRole('button', { name: 'Record', exact: true }).click();
    await expect.poll(() => page.getByLabel('When').getAttribute('aria-invalid')).toBe('true');
    expect(await typed(page, 'Note')).toBe('packed water replaced');
    await summary.getByRole('link', { name: 'When' }).click();
    expect(await page.getByLabel('When').evaluate((box) => box === document.activeElement)).toBe(true);
  });

  test('a date that could be read two ways is asked again before anything is sent', async () => {
    const { page } = await openForm('&fact=serviced');
    let sent = 0;
    page.on('request', (request) => {
      sent += request.method() === 'POST' ? 1 : 0;
    });
    await page.getByLabel('When').fill('03/04/2026');
    await page.getByRole('button', { name: 'Record', exact: true }).click();

    await page.getByText('Write the month in letters').first().waitFor();
    expect(sent).toBe(0);
  });

  test('sent again after a silence, it is recorded once', async () => {
    const { page, raftId } = await openForm('&fact=serviced');
    const keys: (string | undefined)[] = [];
    await page.route('**/v1/items/*/facts', async (route) => {
      if (route.request().method() !== 'POST') return route.continue();
      keys.push(route.request().headers()['idempotency-key']);
      // The first one arrives, but its answer is lost on the way.
      if (keys.length > 1) return route.continue();
      await route.fetch();
      return route.abort('connectionreset');
    });
    await page.getByLabel('When').fill('20 Nov 2026');
    const record = page.getByRole('button', { name: 'Record', exact: true });
    await record.click();
    await page.getByText('it will not be recorded twice').waitFor();
    expect(await typed(page, 'When')).toBe('20 Nov 2026');

    await record.click();
    await page.getByRole('heading', { name: 'Recorded' }).waitFor();
    expect(keys).toHaveLength(2);
    expect(keys[0]).toBe(keys[1]);
    const facts = await page.evaluate(async (id) => (await fetch(`/v1/items/${id}/facts`)).json(), raftId);
    expect(facts.items.filter(({ on }: { on: string }) => on === '2026-11-20')).toHaveLength(1);
  });
});

describe('correcting a fact', () => {
  test('strikes the wrong one out, which stays readable, and moves what depended on it', async () => {
    const { page } = await signedIn();
    await page.getByRole('button', { name: 'Liferaft, 8 persons' }).first().click();
    await page.getByRole('link', { name: 'Strike out and correct: 22 Sep 2025, serviced' }).click();

    await page.getByLabel('When').waitFor();
    expect(await typed(page, 'When')).toBe('22 Sep 2025');
    expect(await typed(page, 'Certificate number')).toBe('5120');
    await page.getByLabel('When').fill('22 Oct 2025');
    await page.getByLabel('Why the old one was wrong').fill('misread month');
    await page.getByRole('button', { name: 'Strike out and record' }).click();

    await page.getByRole('heading', { name: 'the old one struck out' }).waitFor();
    expect(await page.locator('.changes .moved').first().textContent()).toMatch(/22 Sep 2026.*22 Oct 2026/s);
    await page.getByRole('link', { name: 'Back to Kittiwake' }).click();
    await page
      .getByRole('button', { name: /^Liferaft, 8 persons: / })
      .first()
      .click();
    const struck = page.locator('.facts li', { hasText: 'struck out: misread month' });
    await struck.waitFor();
    expect(await struck.locator('del').first().textContent()).toBe('22 Sep 2025');
  });
});

describe('adding a thing aboard', () => {
  test('puts it on her list, unknown until there are facts, and goes on to record one', async () => {
    const { page, dunlinId } = await signedIn();
    await page.goto(`${app.address()}/vessels/${dunlinId}/add`);
    await page.getByRole('button', { name: 'Add it' }).click();
    await page.getByText('Not added yet').waitFor();

    await page.getByLabel('What kind of thing').selectOption('gas_hose');
    await page.getByText('licensed gas engineer').waitFor();
    await page.getByLabel('What it is called aboard').fill('Gas hose, cooker');
    await page.getByRole('button', { name: 'Add it' }).click();

    await page.getByRole('heading', { name: 'Record a fact aboard Dunlin' }).waitFor();
    expect(await page.getByLabel('Which thing').locator('option:checked').textContent()).toBe('Gas hose, cooker');
    await page.getByRole('link', { name: 'Back to Dunlin' }).click();
    const entry = page.getByRole('article', { name: 'Gas hose, cooker' });
    await entry.waitFor();
    expect(await entry.textContent()).toContain('Unknown');
  });

  test('is not offered to whoever may not', async () => {
    const fleet = await smallFleet();
    const page = await app.signIn(await browser(), fleet.organisation, 'viewer');
    await page.goto(`${app.address()}/vessels/${fleet.kittiwakeId}`);
    await page.getByRole('heading', { name: /^Kittiwake has/ }).waitFor();

    expect(await page.getByRole('link', { name: /Record|Add/ }).count()).toBe(0);
  });
});
