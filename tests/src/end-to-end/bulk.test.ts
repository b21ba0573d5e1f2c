import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { expectNoAxeViolations, useBrowser } from '../support/browser.ts';
import { pools } from '../support/database.ts';
import { mintOrganisation } from '../support/organisation.ts';
import { useStartedApp } from '../support/started-app.ts';
import { anItem, aVessel, state } from '../support/vessels.ts';

const browser = useBrowser();
const app = useStartedApp();
const COUNT = 14;

/** Fourteen extinguishers on two vessels, last serviced two years ago. */
async function extinguishers(role: 'owner' | 'viewer' = 'owner') {
  const organisation = await mintOrganisation(pools);
  const ctx = organisation.ctx();
  const vessels = [await aVessel(ctx, ['bs5306'], 'Kittiwake'), await aVessel(ctx, ['bs5306'], 'Petrel')];
  const ids: string[] = [];
  for (let nth = 1; nth <= COUNT; nth++) {
    const vessel = vessels[nth % 2]?.id ?? '';
    const { item } = await anItem(ctx, vessel, 'portable_extinguisher_dry_powder', `Extinguisher ${nth}`);
    const on = nth === 3 ? '2026-11-24' : '2024-10-01';
    await state(ctx, item.id, { fact: 'serviced', on, doneBy: { capacity: 'fire_equipment_technician' } });
    ids.push(item.id);
  }
  const page = await app.signIn(await browser(), organisation, role);
  await page.goto(`${app.address()}/due?until=any`);
  await page.locator('.due-line').first().waitFor();
  return { page, ids };
}

const boxes = (page: Page) =>
  page.getByRole('checkbox', { name: /Extinguisher \d+, \w+: Have the extinguisher serviced/ });
const factsOf = (page: Page, id: string) =>
  page.evaluate(async (item) => (await (await fetch(`/v1/items/${item}/facts`)).json()).items, id);

async function fillIn(page: Page, on: string) {
  const form = page.getByRole('dialog');
  await form.getByLabel('When').fill(on);
  await form.getByLabel('In what capacity').selectOption('fire equipment technician');
  await form.getByRole('button', { name: /^Record for/ }).click();
}

describe('recording for many at once', () => {
  test('by keyboard: a row, with Shift every row up to another, one form, an answer for each, one undo', async () => {
    const { page, ids } = await extinguishers();
    const services = boxes(page);
    await services.nth(COUNT - 1).waitFor();

    await services.first().focus();
    await page.keyboard.press('Space');
    await services.last().focus();
    await page.keyboard.press('Shift+Space');
    await page.getByText('Fourteen things chosen.').last().waitFor();
    await page.getByRole('button', { name: 'Record a fact for all 14' }).click();
    await page.getByRole('dialog', { name: 'Record a fact for fourteen things at once' }).waitFor();
    await page.getByRole('dialog').getByLabel('What happened').selectOption('Serviced');
    await expectNoAxeViolations(page);
    await fillIn(page, '20 Nov 2026');

    await page.getByRole('heading', { name: 'Recorded for fourteen things.' }).waitFor();
    expect(await page.locator('.bulk-outcome li').count()).toBe(COUNT);
    for (const id of ids) expect(await factsOf(page, id)).toHaveLength(2);

    await page.getByRole('button', { name: 'Undo all 14' }).click();
    await page.getByRole('heading', { name: 'Taken back for fourteen things.' }).waitFor();
    for (const id of ids) {
      const facts: { struckOutBy: string | null; retracts?: true }[] = await factsOf(page, id);
      expect(facts.filter(({ struckOutBy, retracts }) => struckOutBy === null && !retracts)).toHaveLength(1);
    }
  });

  test('what is refused says why, and the others are recorded', async () => {
    const { page, ids } = await extinguishers();
    await page.route('**/v1/facts', async (route) => {
      const body = route.request().postDataJSON();
      body.items[0].itemId = '0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a';
      await route.continue({ postData: JSON.stringify(body) });
    });
    await page.getByRole('checkbox', { name: 'Choose every row shown' }).first().click();
    await page.getByRole('button', { name: /Record a fact for all/ }).click();
    await page.getByRole('dialog').getByLabel('What happened').selectOption('Serviced');
    await fillIn(page, '20 Nov 2026');

    await page.getByRole('heading', { name: 'Recorded for thirteen things, refused for one other.' }).waitFor();
    expect(await page.locator('.bulk-outcome li', { hasText: 'Refused:' }).textContent()).toContain(
      'No such thing here',
    );
    expect((await Promise.all(ids.map((id) => factsOf(page, id)))).filter((facts) => facts.length === 2)).toHaveLength(
      13,
    );
  });

  test('a date that cannot be read is asked again, and nothing is sent', async () => {
    const { page } = await extinguishers();
    let sent = 0;
    page.on('request', (request) => {
      sent += request.method() === 'POST' ? 1 : 0;
    });
    await boxes(page).first().check();
    await page.getByRole('button', { name: 'Record a fact for it' }).click();
    await fillIn(page, '3/4/2026');

    await page.getByRole('dialog').getByText('Day and month could be mistaken').first().waitFor();
    expect(sent).toBe(0);
    await page.keyboard.press('Escape');
    await page.getByText('One thing chosen.').last().waitFor();
  });

  test('is not offered to whoever only looks', async () => {
    const { page } = await extinguishers('viewer');

    expect(await page.getByRole('checkbox').count()).toBe(0);
  });
});
