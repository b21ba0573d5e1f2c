/** What a thing is, and what its rules ask besides dates: changed in the browser. */
import { changeItem } from '@garboard/actions/item/change-item.ts';
import { describe, expect, test } from 'vitest';
import { useBrowser } from '../support/browser.ts';
import { pools } from '../support/database.ts';
import { accepted, mintOrganisation } from '../support/organisation.ts';
import { useStartedApp } from '../support/started-app.ts';
import { anItem, aVessel, state } from '../support/vessels.ts';

const browser = useBrowser();
const app = useStartedApp();

/** A hose made a year before it was fitted: what its life counts from is for whoever answers for the boat to say. */
async function aHose(role: 'owner' | 'viewer' = 'owner') {
  const organisation = await mintOrganisation(pools);
  const ctx = organisation.ctx();
  const vessel = await aVessel(ctx, [], 'Sanderling');
  const { item } = await anItem(ctx, vessel.id, 'gas_hose', 'Gas hose, cooker');
  await state(ctx, item.id, { fact: 'manufactured', on: '2023-03-10' });
  await state(ctx, item.id, { fact: 'installed', on: '2024-04-20' });
  const page = await app.signIn(await browser(), organisation, role);
  return { page, ctx, vessel, item };
}

describe('what a thing is', () => {
  test('is changed from the vessel’s page, and a setting of its rules moves the date at once', async () => {
    const { page, vessel } = await aHose();
    await page.goto(`${app.address()}/vessels/${vessel.id}`);
    await page.getByText('31 Mar 2028').first().waitFor();
    await page.getByRole('link', { name: 'What it is: Gas hose, cooker' }).click();

    await page
      .getByLabel('What the life of the hose counts from')
      .selectOption({ label: 'its fitting, where that is on record, as the trade has it' });
    await page.getByLabel('Serial number').fill('H-77');
    await page.getByRole('button', { name: 'Keep it so' }).click();

    await page.getByText('20 Apr 2029').first().waitFor();
    expect(await page.getByRole('article', { name: 'Gas hose, cooker' }).textContent()).toContain('H-77');
  });

  test('is kept whole where two change it at once: theirs is shown beside what was typed, and one choice settles it', async () => {
    const { page, ctx, item } = await aHose();
    await page.goto(`${app.address()}/items/${item.id}/change`);
    await page.getByLabel('Maker').fill('Quillmere');
    const version = item.version + 2;
    accepted(await changeItem(ctx, { itemId: item.id, expectedVersion: version, change: { maker: 'Saltpan' } }));

    await page.getByRole('button', { name: 'Keep it so' }).click();
    const theirs = page.getByRole('region', { name: 'As it is now' });
    await theirs.waitFor();
    expect(await theirs.textContent()).toContain('Saltpan');
    expect(await page.getByLabel('Maker').inputValue()).toBe('Quillmere');

    await page.getByRole('button', { name: 'Keep it so' }).click();
    await page.getByText('Quillmere').first().waitFor();
    expect(await page.getByText('Saltpan').count()).toBe(0);
  });

  test('says at its box what cannot be read, and is for those who keep the register', async () => {
    const { page, item } = await aHose();
    await page.goto(`${app.address()}/items/${item.id}/change`);
    await page.getByLabel('How many').fill('none');
    await page.getByRole('button', { name: 'Keep it so' }).click();
    expect(await page.getByRole('alert').textContent()).toContain('A whole number is needed, from 1.');

    const other = await aHose('viewer');
    await other.page.goto(`${app.address()}/items/${other.item.id}/change`);
    await other.page.getByRole('heading', { name: 'This page is not for your role' }).waitFor();
  });

  test('can be said as it is put aboard', async () => {
    const { page, vessel } = await aHose();
    await page.goto(`${app.address()}/vessels/${vessel.id}/add`);
    await page.getByLabel('What it is called aboard').fill('Gas hose, heater');
    await page.getByLabel('What kind of thing').selectOption({ label: 'Gas (LPG) hose' });
    await page
      .getByLabel('What the life of the hose counts from')
      .selectOption({ label: 'its fitting, where that is on record, as the trade has it' });
    await page.getByRole('button', { name: 'Add it' }).click();

    await page.getByLabel('What happened').waitFor();
    await page.goto(`${app.address()}/vessels/${vessel.id}`);
    await page.getByRole('link', { name: 'What it is: Gas hose, heater' }).click();
    expect(await page.getByLabel('What the life of the hose counts from').inputValue()).toBe('fitting');
  });
});
