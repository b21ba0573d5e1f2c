/** What is known of a vessel, changed in the browser: what she is kept under decides what is asked of her. */
import { describe, expect, test } from 'vitest';
import { useBrowser } from '../support/browser.ts';
import { pools } from '../support/database.ts';
import { mintOrganisation } from '../support/organisation.ts';
import { useStartedApp } from '../support/started-app.ts';
import { anItem, aVessel } from '../support/vessels.ts';

const browser = useBrowser();
const app = useStartedApp();

async function aBoat(role: 'owner' | 'yard' = 'owner') {
  const organisation = await mintOrganisation(pools);
  const vessel = await aVessel(organisation.ctx(), [], 'Turnstone', { builtYear: 2001 });
  await anItem(organisation.ctx(), vessel.id, 'liferaft', 'Liferaft, 6 persons');
  const page = await app.signIn(await browser(), organisation, role);
  return { page, vessel };
}

describe('what is known of a vessel', () => {
  test('is changed from her page; a scheme switched on brings its duties at once', async () => {
    const { page, vessel } = await aBoat();
    await page.goto(`${app.address()}/vessels/${vessel.id}`);
    await page.getByRole('link', { name: 'What is known of her' }).click();

    await page.getByRole('checkbox', { name: 'SOLAS', exact: true }).check();
    await page.getByLabel('Length overall, m').fill('9,6');
    await page.getByLabel('Home port').fill('Wrackholm');
    await page.getByRole('button', { name: 'Keep it so' }).click();

    await page.getByText('Have the liferaft serviced at an approved station').first().waitFor();
    expect(await page.locator('header').first().textContent()).not.toBeNull();
    const text = await page.locator('main').textContent();
    expect(text).toContain('Kept under SOLAS');
    expect(text).toContain('9.6');
  });

  test('says what her identifiers say while they are typed, and where they do not agree', async () => {
    const { page, vessel } = await aBoat();
    await page.goto(`${app.address()}/vessels/${vessel.id}/change`);
    await page.getByLabel('HIN').fill('GB-QZX00042C898');
    const said = page.getByRole('status', { name: 'What they say' });
    await said.getByText(/built by QZX/).waitFor();
    await said.getByText(/says 1998.*built in 2001/).waitFor();

    await page.getByRole('button', { name: 'Keep it so' }).click();
    await page.getByRole('heading', { name: 'How she is identified' }).waitFor();
  });

  test('says at its box what cannot be read, sends nothing without a change, and is for those who keep the register', async () => {
    const { page, vessel } = await aBoat();
    await page.goto(`${app.address()}/vessels/${vessel.id}/change`);
    await page.getByRole('button', { name: 'Keep it so' }).click();
    await page.getByText('Nothing was changed.').waitFor();
    await page.getByLabel('Year built').fill('about 1990');
    await page.getByRole('button', { name: 'Keep it so' }).click();
    await page.getByText('A whole number is needed.').first().waitFor();

    const yard = await aBoat('yard');
    await yard.page.goto(`${app.address()}/vessels/${yard.vessel.id}/change`);
    await yard.page.getByRole('heading', { name: 'This page is not for your role' }).waitFor();
  });
});
