/** What stands beside the dated lines of the due list, and a fact that is taken back with nothing in its place. */
import { recordSituation } from '@garboard/actions/vessel/record-situation.ts';
import { describe, expect, test } from 'vitest';
import { useBrowser } from '../support/browser.ts';
import { pools } from '../support/database.ts';
import { accepted, mintOrganisation } from '../support/organisation.ts';
import { useStartedApp } from '../support/started-app.ts';
import { anItem, aVessel, state } from '../support/vessels.ts';
import { smallFleet } from './small-fleet.ts';

const browser = useBrowser();
const app = useStartedApp();

/** A school's boat under the American rules, laid up and dismantled, and a ship under SOLAS with two extinguishers. */
async function twoBoats() {
  const organisation = await mintOrganisation(pools);
  const ctx = organisation.ctx();
  const plover = await aVessel(ctx, ['us_sailing_school'], 'Golden Plover');
  const flares = (await anItem(ctx, plover.id, 'hand_flare', 'Flares in the grab bag')).item.id;
  await state(ctx, flares, { fact: 'printed_expiry', on: '2026-06' });
  const laidUp = { from: '2026-10-18', place: 'ashore', use: 'laid_up', dismantled: true, underRepair: false } as const;
  accepted(await recordSituation(ctx, { vesselId: plover.id, ...laidUp }));
  const whimbrel = await aVessel(ctx, ['solas'], 'Whimbrel');
  for (const label of ['Extinguisher, galley', 'Extinguisher, saloon']) {
    const { item } = await anItem(ctx, whimbrel.id, 'portable_extinguisher_dry_powder', label);
    await state(ctx, item.id, { fact: 'manufactured', on: '2021-03' });
  }
  const page = await app.signIn(await browser(), organisation);
  await page.goto(`${app.address()}/due`);
  return page;
}

describe('beside the dated lines', () => {
  test('stands what is suspended while a boat is laid up: said to be so, and counted apart', async () => {
    const page = await twoBoats();

    const suspended = page.getByRole('region', { name: /Suspended while she is laid up/ });
    await suspended.getByText('Flares in the grab bag').first().waitFor();
    expect(await suspended.textContent()).toContain('must be done before she returns to service');
    expect(await suspended.locator('.due-line').first().textContent()).toContain('suspended');
    const underTheRules = page.locator('.due-line', { hasText: '46 CFR 169' });
    expect(await underTheRules.count()).toBe(await suspended.locator('.due-line', { hasText: '46 CFR 169' }).count());
    expect(await page.locator('.answer').textContent()).toMatch(/^Nothing on record is out of date/);
  });

  test('stands what some extinguishers owe together, whichever of them', async () => {
    const page = await twoBoats();

    const samples = page.getByRole('region', { name: 'One of each, whichever it is' });
    await samples.getByText('Extinguisher, galley').waitFor();
    const line = await samples.locator('li').textContent();
    expect(line).toMatch(/Overdue.*Whimbrel.*of 2021, by 1 Mar 2026.*Extinguisher, galley.*Extinguisher, saloon/s);
    expect(await samples.textContent()).toContain('Licensed people do it');
  });
});

test('a fact that was entered on the wrong thing is struck out with nothing in its place, and the date follows', async () => {
  const fleet = await smallFleet();
  const page = await app.signIn(await browser(), fleet.organisation);
  await page.goto(`${app.address()}/due`);
  await page.getByRole('button', { name: 'Liferaft, 8 persons' }).first().click();
  await page
    .getByRole('link', { name: /22 Sep(tember)? 2025, / })
    .first()
    .click();
  await page.getByLabel('Why the old one was wrong').fill('It was the raft of another boat.');

  await page.getByRole('button', { name: 'Strike out, with nothing in its place' }).click();

  await page.getByRole('heading', { name: 'Recorded' }).waitFor();
  await page.goto(`${app.address()}/due`);
  const raft = page.locator('.due-line', { hasText: 'Liferaft, 8 persons' });
  await raft.first().waitFor();
  expect(await raft.filter({ hasText: '22 Sep 2026' }).count()).toBe(0);
  await page.getByRole('button', { name: 'Liferaft, 8 persons' }).first().click();
  await page.getByText('struck out: It was the raft of another boat.').first().waitFor();
});
