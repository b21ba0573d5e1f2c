import { describe, expect, test } from 'vitest';
import { expectNoAxeViolations, useBrowser } from '../support/browser.ts';
import { useStartedApp } from '../support/started-app.ts';
import { smallFleet } from './small-fleet.ts';

const browser = useBrowser();
const app = useStartedApp();

async function savedView(shared = false) {
  const fleet = await smallFleet();
  const page = await app.signIn(await browser(), fleet.organisation);
  await page.goto(`${app.address()}/due?standing=overdue`);
  await page.getByRole('button', { name: 'Save this view …' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Save', exact: true }).click();
  await page.getByText('It needs a name.').waitFor();
  await page.getByLabel('Name', { exact: true }).fill('Monday’s round');
  if (shared) await page.getByLabel('Everybody here sees it').check();
  await expectNoAxeViolations(page);
  await page.keyboard.press('Enter');
  await page.getByRole('combobox', { name: /^view: Monday’s round/ }).waitFor();
  return { page, ...fleet, viewId: new URL(page.url()).searchParams.get('view') ?? '' };
}

describe('a saved view', () => {
  test('has an address of its own, which opens it with its filters', async () => {
    const { page, viewId } = await savedView();

    await page.goto(`${app.address()}/views/${viewId}`);
    await page.getByRole('combobox', { name: 'standing: overdue' }).waitFor();
    expect(new URL(page.url()).pathname).toBe('/due');
    expect(await page.getByText('changed since it was saved').count()).toBe(0);
  });

  test('says when the filters differ, and takes the change over', async () => {
    const { page, viewId } = await savedView();
    await page.getByRole('combobox', { name: 'weight: any' }).click();
    await page.getByRole('option', { name: 'law', exact: true }).click();

    await page.getByText('changed since it was saved').waitFor();
    await page.getByRole('button', { name: 'Save the change' }).click();
    await page.getByText('changed since it was saved').waitFor({ state: 'detached' });
    await page.goto(`${app.address()}/views/${viewId}`);
    await page.getByRole('combobox', { name: 'weight: law' }).waitFor();
  });

  test('is removed without a question, and brought back under the same address', async () => {
    const { page, viewId } = await savedView();

    await page.getByRole('button', { name: 'Remove it' }).click();
    await page.getByText('“Monday’s round” is removed.').waitFor();
    expect(await page.getByRole('combobox', { name: /^view/ }).count()).toBe(0);
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByRole('combobox', { name: /^view: Monday’s round/ }).waitFor();
    expect(new URL(page.url()).searchParams.get('view')).toBe(viewId);
  });

  test('that is shared stands on everybody’s list; whoever only looks opens it and changes nothing', async () => {
    const { organisation } = await savedView(true);
    const page = await app.signIn(await browser(), organisation, 'viewer');
    await page.goto(`${app.address()}/due`);

    await page.getByRole('combobox', { name: 'view: none' }).click();
    await page.getByRole('option', { name: 'Monday’s round (everybody’s)' }).click();
    await page.getByRole('combobox', { name: 'standing: overdue' }).waitFor();
    expect(await page.getByRole('button', { name: /Save|Remove/ }).count()).toBe(0);
  });

  test('of somebody else is not here', async () => {
    const { viewId } = await savedView();
    const page = await app.signIn(await browser(), (await smallFleet()).organisation);

    await page.goto(`${app.address()}/views/${viewId}`);
    await page.getByRole('heading', { name: 'Nothing is kept under this address' }).waitFor();
  });
});
