/** A finding from the day it is entered until somebody else has looked, in the browser. */
import { expect, test } from 'vitest';
import { useBrowser } from '../support/browser.ts';
import { useStartedApp } from '../support/started-app.ts';
import { smallFleetWithFindings } from './small-fleet.ts';

const browser = useBrowser();
const app = useStartedApp();

test('a finding is entered and reported done by the yard with the keyboard alone, and verified by somebody else', async () => {
  const { organisation, kittiwakeId } = await smallFleetWithFindings();
  const yard = await app.signIn(await browser(), organisation, 'yard');
  await yard.goto(`${app.address()}/vessels/${kittiwakeId}/finding`);
  await yard.getByLabel('Where aboard').focus();
  for (const words of ['Cockpit', 'Bilge pump hose split', 'watertight', 'this']) {
    await yard.keyboard.type(words);
    await yard.keyboard.press('Tab');
  }
  await yard.keyboard.press('Tab');
  await yard.keyboard.press('Enter');
  await yard.getByText('Not yet').waitFor({ state: 'detached' });
  await yard.getByRole('button', { name: 'Enter it' }).press('Enter');
  await yard.getByRole('heading', { level: 1, name: 'Bilge pump hose split' }).waitFor();
  await yard.getByText('Found; nothing decided yet.').waitFor();
  expect(await yard.getByRole('button', { name: 'Put off' }).count(), 'the yard puts nothing off').toBe(0);

  await yard.getByRole('button', { name: 'Report it done' }).press('Enter');
  await yard.getByLabel('What was done').fill('Hose renewed and double clipped');
  await yard.getByRole('button', { name: 'Write it down' }).press('Enter');
  await yard.getByText('Reported done on 25 Nov 2026; nobody else has looked yet.').waitFor();
  expect(await yard.getByRole('button', { name: 'Verify' }).count(), 'whoever did it does not verify it').toBe(0);

  const manager = await app.signIn(await browser(), organisation, 'manager');
  await manager.goto(yard.url());
  await manager.getByRole('button', { name: 'Verify' }).click();
  await manager.getByRole('button', { name: 'Write it down' }).click();
  await manager.getByText('Not yet').waitFor();
  await manager.getByRole('textbox', { name: 'What shows it' }).fill('Pumped dry, no drip in ten minutes');
  await manager.getByRole('button', { name: 'Write it down' }).click();
  await manager.getByText('Verified on 25 Nov 2026.').waitFor();
  await manager.getByText('What shows it: Pumped dry, no drip in ten minutes').waitFor();
});

test('two people change one finding at once: both see both, and one choice settles it', async () => {
  const { organisation, hoseId } = await smallFleetWithFindings();
  const [one, two] = [await app.signIn(await browser(), organisation), await app.signIn(await browser(), organisation)];
  for (const page of [one, two]) {
    await page.goto(`${app.address()}/findings/${hoseId}?do=propose`);
    await page.getByLabel('What is to be done').waitFor();
  }
  await one.getByLabel('What is to be done').fill('Replace the hose');
  await one.getByRole('button', { name: 'Write it down' }).click();
  await one.locator('.story').getByText('Replace the hose').waitFor();

  await two.getByLabel('What is to be done').fill('Take the cooker out');
  await two.getByRole('button', { name: 'Write it down' }).click();
  await two.getByText('Somebody else wrote meanwhile').waitFor();
  await two.locator('.meanwhile').getByText('Replace the hose').waitFor();
  expect(await two.getByLabel('What is to be done').inputValue()).toBe('Take the cooker out');
  await two.getByRole('button', { name: 'Send mine as well' }).click();
  await two.locator('.story').getByText('Take the cooker out').first().waitFor();
  await two.locator('.story').getByText('Replace the hose').waitFor();
});

test('what is found again is offered before it is entered twice', async () => {
  const { organisation, kittiwakeId, hoseId } = await smallFleetWithFindings();
  const page = await app.signIn(await browser(), organisation, 'surveyor');
  await page.goto(`${app.address()}/vessels/${kittiwakeId}`);
  await page.getByRole('link', { name: 'Enter a finding' }).click();
  await page.getByLabel('Where aboard').selectOption('gas_installation');
  await page.getByLabel('What is not right').fill('Cooker hose perished');
  await page.getByRole('complementary').getByRole('link', { name: 'Gas hose cracked at the cooker' }).click();
  await page.getByLabel('What was seen', { exact: true }).selectOption('worse');
  await page.getByRole('button', { name: 'Write it down' }).click();
  await page.getByText('Seen again: worse').waitFor();
  expect(page.url()).toContain(hoseId);
});
