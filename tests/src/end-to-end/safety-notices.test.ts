import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { expectNoAxeViolations, takeScreenshot, useBrowser } from '../support/browser.ts';
import { pools } from '../support/database.ts';
import { aNotice, answered, hosePlate } from '../support/notices.ts';
import { mintOrganisation } from '../support/organisation.ts';
import { useStartedApp } from '../support/started-app.ts';
import { anItem, aVessel } from '../support/vessels.ts';

const browser = useBrowser();
const app = useStartedApp();

/** Two boats with three hoses of an invented maker: one covered, one unread, one outside. */
async function hoses() {
  const organisation = await mintOrganisation(pools);
  const ctx = organisation.ctx();
  const teal = await aVessel(ctx, [], 'Teal');
  const wigeon = await aVessel(ctx, [], 'Wigeon');
  const hose = async (vesselId: string, label: string, serial: string | null) =>
    (await anItem(ctx, vesselId, 'gas_hose', label, hosePlate(serial))).item.id;
  const covered = await hose(teal.id, 'Gas hose, cooker', 'AB1250');
  await hose(wigeon.id, 'Gas hose, heater', null);
  await hose(wigeon.id, 'Gas hose, cooker', 'AB1400');
  return { organisation, ctx, covered };
}

async function enterInForm(page: Page): Promise<void> {
  await page.getByLabel('What it is about').fill('Hoses that may come off the tail');
  await page.getByLabel('Who published it').fill('Quillmere Hose Works');
  await page.getByLabel('Its date').fill('3 Sep 2026');
  await page.getByLabel('Which document').fill('Letter to owners');
  await page.getByLabel('Which kind of thing').selectOption('gas_hose');
  await page.getByLabel('Makers it names').fill('Quillmere hose works');
  await page.getByLabel('Serial numbers it names').fill('AB1200 – AB1399');
}

describe('a maker’s notice', () => {
  test('is tried as it is typed, entered, answered for each thing, and gone from the due list', async () => {
    const { organisation } = await hoses();
    const page = await app.signIn(await browser(), organisation);
    await page.goto(`${app.address()}/due`);
    await page.getByRole('navigation').getByRole('link', { name: 'Notices' }).click();
    await page.getByRole('link', { name: 'Enter a notice' }).click();

    await enterInForm(page);
    await page.getByText('It covers one thing and may cover one more, on two vessels.').waitFor();
    await page.getByText('Of the same kind, and not covered: 1.').waitFor();
    await page.getByRole('button', { name: 'Enter the notice' }).click();
    await page.getByText('Not entered yet').waitFor();
    await page.getByLabel('What can happen').fill('gas can escape below');
    await page.getByLabel('In its own words').fill('Have the hose replaced by a gas engineer');
    await page.getByRole('button', { name: 'Enter the notice' }).click();

    await page.getByRole('heading', { name: 'Hoses that may come off the tail' }).waitFor();
    await page.getByText('Two things on two vessels wait for an answer.').waitFor();
    await page.getByRole('link', { name: 'Answer: Gas hose, cooker, Teal' }).click();
    expect(await page.getByRole('option', { name: 'Put off' }).count(), 'before the next use nothing is put off').toBe(
      0,
    );
    await page.getByLabel('What is the answer').selectOption('done');
    await page.getByLabel('When').fill('1 Oct 2026');
    await page.getByLabel('Another one was put in its place').check();
    await page.getByLabel('Serial number read on it').fill('AC0001');
    await page.getByLabel('Name').fill('Ines Vale');
    await page.getByRole('button', { name: 'Record the answer' }).click();
    await page.getByText('Not recorded yet').waitFor();
    await page.getByLabel('In what capacity').selectOption('gas_engineer');
    await page.getByLabel('What shows it').selectOption('certificate');
    await page.getByRole('button', { name: 'Record the answer' }).click();

    await page.getByText('One thing on one vessel waits for an answer.').waitFor();
    await page.getByText('serial number AC0001 read; another one was put in its place').waitFor();

    await page.goto(`${app.address()}/due`);
    const line = page.locator('.due-line', { hasText: 'may cover it' });
    await line.waitFor();
    expect(await line.textContent()).toContain('Wigeon');
    await line.getByRole('button').click();
    await page.getByRole('link', { name: 'Answer the notice' }).click();
    await page.getByRole('heading', { name: 'What was done about Gas hose, heater aboard Wigeon' }).waitFor();
  });

  test('keeps a wrong answer readable when it is corrected, and can be withdrawn', async () => {
    const { organisation, ctx, covered } = await hoses();
    const { id } = await aNotice(ctx);
    await answered(ctx, id, covered);
    const page = await app.signIn(await browser(), organisation);
    await page.goto(`${app.address()}/notices/${id}`);

    await page.getByRole('link', { name: 'correct' }).click();
    await page.getByLabel('What is the answer').selectOption('reopened');
    await page.getByLabel('Why').fill('It was the other hose.');
    await page.getByRole('button', { name: 'Strike out and record' }).click();
    await page.getByText('Two things on two vessels wait for an answer.').waitFor();
    expect(await page.locator('del').textContent()).toContain('Done on 1 Oct 2026 by Ines Vale, W-118');

    await page.getByText('Withdraw the notice').first().click();
    await page.getByLabel('Why it is withdrawn').fill('The maker took it back.');
    await page.getByRole('button', { name: 'Withdraw the notice' }).click();
    await page.getByText('Withdrawn on 25 Nov 2026: “The maker took it back.”').waitFor();
    await page.goto(`${app.address()}/notices?state=withdrawn`);
    await page.getByRole('row', { name: /Hoses that may come off the tail/ }).waitFor();
  });

  test('offers a reader nothing that would be refused', async () => {
    const { organisation, ctx } = await hoses();
    const { id } = await aNotice(ctx);
    const page = await app.signIn(await browser(), organisation, 'viewer');
    await page.goto(`${app.address()}/notices/${id}`);
    await page.getByText('Which things aboard').waitFor();
    for (const name of [/^Answer/, /^correct/]) expect(await page.getByRole('link', { name }).count()).toBe(0);
    expect(await page.getByText('Withdraw the notice').count()).toBe(0);
  });
});

const SCREENS: Record<string, (page: Page, noticeId: string, itemId: string) => Promise<void>> = {
  notices: async (page) => {
    await page.goto(`${app.address()}/notices?state=all`);
    await page.getByRole('row', { name: /Hoses that may come off/ }).waitFor();
  },
  notice: async (page, noticeId) => {
    await page.goto(`${app.address()}/notices/${noticeId}`);
    await page.getByText('Withdraw the notice').first().click();
  },
  'notice-answer': async (page, noticeId, itemId) => {
    await page.goto(`${app.address()}/notices/${noticeId}/answer?item=${itemId}`);
    await page.getByLabel('What is the answer').selectOption('done');
    await page.getByRole('button', { name: 'Record the answer' }).click();
    await page.getByText('Not recorded yet').waitFor();
  },
  'notice-new': async (page) => {
    await page.goto(`${app.address()}/notices/new`);
    await enterInForm(page);
    await page.getByText('It covers one thing and may cover one more').waitFor();
  },
  'notice-on-the-due-list': async (page) => {
    await page.goto(`${app.address()}/due`);
    await page.locator('.due-line', { hasText: 'may cover it' }).first().getByRole('button').click();
    await page.getByRole('link', { name: 'Answer the notice' }).waitFor();
  },
};

describe.each(['light', 'dark'] as const)('%s', (theme) => {
  test.each(Object.keys(SCREENS))('%s: axe finds nothing, and nothing runs off the side at any width', async (name) => {
    const { organisation, ctx, covered } = await hoses();
    const { id } = await aNotice(ctx);
    const other = await aNotice(ctx, {
      title: 'Hoses of last year',
      issuedOn: '2026-08-01',
      deadline: { kind: 'on', on: '2026-09-30' },
    });
    await answered(ctx, other.id, covered, { on: '2026-09-20' });
    const page = await app.signIn(
      await browser({ colorScheme: theme, viewport: { width: 1440, height: 900 } }),
      organisation,
    );
    await SCREENS[name]?.(page, id, covered);
    for (const width of [1440, 820, 390]) {
      await page.setViewportSize({ width, height: 900 });
      await takeScreenshot(page, name, theme);
      await expectNoAxeViolations(page);
      expect(await overflow(page), `${name} at ${width}`).toBeLessThanOrEqual(0);
    }
  });
});

const overflow = (page: Page) =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
