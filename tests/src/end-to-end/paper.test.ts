/** What hangs on the yard's wall: the due list and the fleet board as paper. The pages are in `.cache/paper`, to look at. */
import { mkdirSync, writeFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { takeScreenshot, useBrowser } from '../support/browser.ts';
import { pools } from '../support/database.ts';
import { mintOrganisation, type TestOrganisation } from '../support/organisation.ts';
import { useStartedApp } from '../support/started-app.ts';
import { anItem, aVessel, state } from '../support/vessels.ts';

const browser = useBrowser();
const app = useStartedApp();
/** Within its margins, in CSS pixels. */
const A4_LANDSCAPE = { width: 1032, height: 690 };
const PAPER = new URL('../../../.cache/paper/', import.meta.url).pathname;
let organisation: TestOrganisation;

beforeAll(async () => {
  organisation = await mintOrganisation(pools);
  const ctx = organisation.ctx();
  for (let nth = 1; nth <= 30; nth++) {
    const vessel = await aVessel(ctx, ['bs5306'], `Vessel ${nth}`);
    const { item } = await anItem(ctx, vessel.id, 'portable_extinguisher_dry_powder', `Extinguisher ${nth}`);
    await state(ctx, item.id, {
      fact: 'serviced',
      on: '2025-12-01',
      doneBy: { capacity: 'fire_equipment_technician' },
    });
  }
});

async function opened(path: string): Promise<Page> {
  const page = await app.signIn(await browser(), organisation);
  await page.goto(app.address() + path);
  return page;
}

/** Prints, keeps the file to look at, and answers with how many pages it has. */
async function print(page: Page, name: string): Promise<number> {
  const pdf = await page.pdf({ preferCSSPageSize: true, printBackground: false });
  mkdirSync(PAPER, { recursive: true });
  writeFileSync(`${PAPER}${name}.pdf`, pdf);
  await page.setViewportSize(A4_LANDSCAPE);
  await page.emulateMedia({ media: 'print' });
  await takeScreenshot(page, `paper-${name}`, 'light');
  return pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;
}

const isShown = (page: Page, selector: string) => page.locator(selector).first().isVisible();

describe('on paper', () => {
  test('the due list says what it is, when it was printed and what it knew, with a box to tick on each row', async () => {
    const page = await opened('/due');
    await page.locator('.due-line').nth(29).waitFor();
    expect(await print(page, 'due-list')).toBeGreaterThan(1);

    const head = await page.locator('.print-line').textContent();
    expect(head).toMatch(/Printed 25 Nov 2026, \d\d:\d\d\. Facts known to 25 Nov 2026, \d\d:\d\d\./);
    for (const gone of ['.navigation', '.find', '.filters', '.views', '.cell-choose input', '.page-header .acts'])
      expect(await isShown(page, gone), gone).toBe(false);
    const style = (selector: string, of: string, pseudo?: string) =>
      page
        .locator(selector)
        .first()
        .evaluate((node, [name, part]) => getComputedStyle(node, part).getPropertyValue(name ?? ''), [of, pseudo]);
    expect(await style('tbody .cell-choose', 'border-top-style', '::before')).toBe('solid');
    expect(await style('.due-table thead', 'display')).toBe('table-header-group');
    expect(await style('.due-line', 'break-inside')).toBe('avoid');
    expect(await style('.standing.due', 'color')).toBe('rgb(0, 0, 0)');
  });

  test('the fleet board has every vessel’s marks, those below the window too', async () => {
    const page = await opened('/');
    await page.locator('a.horizon-target').first().waitFor();
    await print(page, 'fleet');

    const rows = page.locator('.horizon-line:has(.horizon-name)');
    await expect.poll(() => rows.count()).toBe(30);
    await expect.poll(() => rows.filter({ has: page.locator('a.horizon-target') }).count()).toBe(30);
  });
});
