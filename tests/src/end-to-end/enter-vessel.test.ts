import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { useBrowser } from '../support/browser.ts';
import { pools } from '../support/database.ts';
import { mintOrganisation } from '../support/organisation.ts';
import { useStartedApp } from '../support/started-app.ts';

const browser = useBrowser();
const app = useStartedApp();

async function form(): Promise<Page> {
  const page = await app.signIn(await browser(), await mintOrganisation(pools));
  await page.goto(`${app.address()}/vessels`);
  await page.getByRole('link', { name: 'Enter a vessel' }).click();
  await page.getByLabel('Name', { exact: true }).waitFor();
  return page;
}

const choose = (page: Page, template: string) => page.getByLabel('Start from').selectOption(template);
const row = (page: Page, label: string) => page.getByRole('group', { name: label, exact: true });
const tick = (page: Page, label: string) => page.getByRole('checkbox', { name: new RegExp(`: ${label}$`) });
const enter = (page: Page) => page.getByRole('button', { name: 'Enter her' }).click();
const vessels = (page: Page) => page.evaluate(async () => (await (await fetch('/v1/vessels')).json()).items);

describe('entering a vessel', () => {
  test('puts her on the register with the things that were confirmed, each without a date', async () => {
    const page = await form();
    await page.getByLabel('Name', { exact: true }).fill('Sanderling');
    await page.getByLabel('Type').fill('RIB');
    await page.getByLabel('Length overall').fill('5,4');
    await page.getByLabel('Time zone').selectOption('Europe/Oslo');
    await page.getByLabel('United Kingdom, small commercial vessel').check();
    await choose(page, 'Safety boat');
    await tick(page, 'Battery').uncheck();
    await row(page, 'Outboard engine').getByLabel('Called').fill('Outboard, 40 hp');
    await enter(page);

    await page.getByRole('heading', { name: /^Sanderling/ }).waitFor();
    const [vessel] = await vessels(page);
    expect(vessel).toMatchObject({ name: 'Sanderling', type: 'RIB', lengthOverallM: 5.4, timeZone: 'Europe/Oslo' });
    expect(vessel.schemes).toEqual(['uk_small_commercial']);
    const items = await page.evaluate(
      async (id) => (await (await fetch(`/v1/vessels/${id}/items`)).json()).items,
      vessel.id,
    );
    const labels = items.map(({ label }: { label: string }) => label);
    expect(labels).toContain('Outboard, 40 hp');
    expect(labels).not.toContain('Battery');
    expect(labels).toHaveLength(12);
  });

  test('needs nothing but a name', async () => {
    const page = await form();
    await page.getByLabel('Name', { exact: true }).fill('Dotterel');
    await enter(page);

    await page.getByText('Nothing aboard her is on record yet.').waitFor();
  });

  test('shows each fault at its box, sends nothing, and loses nothing that was typed', async () => {
    const page = await form();
    let sent = 0;
    page.on('request', (request) => {
      sent += request.method() === 'POST' ? 1 : 0;
    });
    await page.getByLabel('Length overall').fill('18 ft');
    await choose(page, 'Training dinghy');
    await row(page, 'Hull and buoyancy').getByLabel('Where').fill('the whole of her');
    await page.locator('#thing-0-quantity').fill('none');
    await choose(page, 'Safety boat');
    await choose(page, 'Training dinghy');
    await enter(page);

    const summary = page.getByRole('alert');
    await summary.getByText('Not entered yet').waitFor();
    expect(sent).toBe(0);
    for (const id of ['vessel-name', 'vessel-lengthOverallM', 'thing-0-quantity'])
      expect(await page.locator(`[id="${id}"]`).getAttribute('aria-invalid'), id).toBe('true');
    expect(await page.getByLabel('Length overall').inputValue()).toBe('18 ft');
    expect(await row(page, 'Hull and buoyancy').getByLabel('Where').inputValue()).toBe('the whole of her');
    await summary.getByRole('link', { name: 'Name', exact: true }).click();
    expect(await page.getByLabel('Name', { exact: true }).evaluate((box) => box === document.activeElement)).toBe(true);
  });

  test('where only her things are refused she is entered once, and the next try puts them aboard', async () => {
    const page = await form();
    await page.getByLabel('Name', { exact: true }).fill('Turnstone');
    await choose(page, 'Training dinghy');
    await row(page, 'Halyards and sheets').getByLabel('Called').fill('x'.repeat(161));
    await enter(page);

    await page.getByRole('alert').getByText('Turnstone is on the register').waitFor();
    const called = page.getByRole('group', { name: 'x'.repeat(161) }).getByLabel('Called');
    expect(await called.getAttribute('aria-invalid')).toBe('true');
    expect(await page.getByLabel('Name', { exact: true }).isDisabled()).toBe(true);
    await called.fill('Halyards');
    await page.getByRole('button', { name: 'Put them aboard' }).click();

    await page.getByRole('heading', { name: /^Turnstone/ }).waitFor();
    expect(await vessels(page)).toHaveLength(1);
    await page.getByText('Halyards').first().waitFor();
  });

  test('is not offered to whoever only looks', async () => {
    const page = await app.signIn(await browser(), await mintOrganisation(pools), 'viewer');
    await page.goto(`${app.address()}/vessels`);
    await page.getByText('No vessel is on the register yet.').waitFor();
    expect(await page.getByRole('link', { name: 'Enter a vessel' }).count()).toBe(0);

    await page.goto(`${app.address()}/vessels/new`);
    await page.getByText('It is for the owner and the managers.').waitFor();
    expect(await page.getByRole('button', { name: 'Enter her' }).count()).toBe(0);
  });
});
