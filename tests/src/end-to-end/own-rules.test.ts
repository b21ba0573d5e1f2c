import { workThroughRuleChanges } from '@garboard/actions/rule/work-through-rule-changes.ts';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { useBrowser } from '../support/browser.ts';
import { pools } from '../support/database.ts';
import { NOW } from '../support/organisation.ts';
import { anOwnRule } from '../support/own-rules.ts';
import { useStartedApp } from '../support/started-app.ts';
import { smallFleet } from './small-fleet.ts';

const browser = useBrowser();
const app = useStartedApp();

async function signedIn(path: string, role: 'owner' | 'viewer' = 'owner') {
  const fleet = await smallFleet();
  const page = await app.signIn(await browser(), fleet.organisation, role);
  await page.goto(app.address() + path);
  const workThrough = () => workThroughRuleChanges(pools.app, fleet.organisation.id, NOW);
  return { page, workThrough, ...fleet };
}

const decide = async (page: Page, from?: string) => {
  if (from) await page.getByLabel(/^Counts (no more )?from/).fill(from);
  await page.getByLabel('Who decided it').fill('Anna Berg');
  await page.getByLabel('Why').fill('Two were found empty.');
  await page.getByLabel('Where it stands in writing').fill('Standing orders, no. 4');
};

describe('a rule of our own', () => {
  test('is laid down from the rules’ page, is worked through while one looks, and gives a date with its reasoning', async () => {
    const { page, workThrough, raftId, kittiwakeId } = await signedIn('/rules');

    await page.getByRole('link', { name: 'Add a rule of our own' }).click();
    await page.getByLabel('The rule, in full sentences').fill('Every raft is looked at once a month.');
    await page.getByLabel('Which things it is about').selectOption('liferaft');
    await page.getByLabel('What somebody must do').fill('Look at the lashing and the release');
    await page.getByLabel('Aboard which vessels').selectOption('chosen');
    await page.getByRole('checkbox', { name: 'Kittiwake' }).check();
    await page.getByLabel('After it was last done').fill('1 month');
    await page.getByLabel('The first time').fill('2 months');
    await page.getByLabel('Counted from').selectOption('manufactured');
    await decide(page, '1 Mar 2026');
    await page.getByRole('button', { name: 'Lay it down' }).click();

    await page.getByRole('heading', { name: 'Inflatable liferaft: what our own rule asks' }).waitFor();
    await page.getByText('Being worked through: 0 of one thing.').waitFor();
    await workThrough();
    await page.getByText('Worked through: one thing looked at, one date changed.').waitFor();
    await page.locator('.worked').first().waitFor();

    await page.goto(`${app.address()}/vessels/${kittiwakeId}`);
    const line = page.getByRole('button', { name: /^Liferaft, 8 persons: Look at the lashing/ });
    await line.click();
    const reasoning = page.locator('.reasoning');
    await reasoning.getByText('set by Anna Berg from 1 March 2026').waitFor();
    expect(await reasoning.getByRole('link', { name: 'Put our own figure in its place' }).count()).toBe(0);
    expect(raftId).not.toBe('');
  });

  test('is not sent while something is missing, and each fault stands at its box, the program’s and the API’s', async () => {
    const { page } = await signedIn('/rules/new');

    await page.getByRole('button', { name: 'Lay it down' }).click();
    const faults = page.getByRole('alert');
    await faults.getByText('Not laid down yet').waitFor();
    await faults.getByRole('link', { name: 'After it was last done' }).waitFor();
    await page.getByLabel('The rule, in full sentences').fill('Weekly.');
    await page.getByLabel('Which things it is about').selectOption('gas_hose');
    await page.getByLabel('What somebody must do').fill('Look');
    await page.getByLabel('After it was last done').fill('soon');
    await page.getByLabel('After running hours').fill('100');
    await decide(page);
    await page.getByRole('button', { name: 'Lay it down' }).click();
    await page.getByText('Not a length of time.').first().waitFor();
    await page.getByLabel('After it was last done').fill('7 days');
    await page.getByRole('button', { name: 'Lay it down' }).click();

    await page.getByText('needs a thing with a running-hours meter').first().waitFor();
    expect(await page.getByLabel('After running hours').getAttribute('aria-invalid')).toBe('true');
    expect(await page.getByLabel('What somebody must do').inputValue()).toBe('Look');
  });

  test('is changed from a day, with its text to start from, and ended; its page keeps every version', async () => {
    const { page, organisation, workThrough } = await signedIn('/rules');
    const { id } = await anOwnRule(organisation.ctx());
    await workThrough();
    await page.goto(`${app.address()}/rules/${id}`);

    await page.getByRole('link', { name: 'Change it from a day' }).click();
    await expect.poll(() => page.getByLabel('After it was last done').inputValue()).toBe('1 month');
    await page.getByLabel('After it was last done').fill('3 months');
    await decide(page, '24 Dec 2026');
    await page.getByRole('button', { name: 'Lay down the new version' }).click();
    const versions = page.getByRole('region', { name: 'Which versions it has' });
    await versions.getByText('Version 2').waitFor();
    expect(await versions.textContent()).toMatch(
      /Version 2 from 24 Dec 2026, still to come.*Version 1 from 1 Mar 2026, counts now/s,
    );

    await page.getByRole('link', { name: 'End it' }).click();
    await decide(page, '20 Nov 2026');
    await page.getByRole('button', { name: 'End the rule' }).click();
    await page.getByText('It has ended: nothing is asked by it now.').waitFor();
    expect(await versions.textContent()).toMatch(
      /Version 3 ends it from 20 Nov 2026, counts now.*Version 1 from 1 Mar 2026, no longer counts/s,
    );
    expect(await page.getByRole('link', { name: 'End it' }).count()).toBe(0);
  });

  test('is read by everybody, and changed by the owner and the managers only', async () => {
    const { page, organisation } = await signedIn('/rules', 'viewer');
    const { id } = await anOwnRule(organisation.ctx());

    await page.getByRole('heading', { name: 'Which rules a date can come from' }).waitFor();
    expect(await page.getByRole('link', { name: 'Add a rule of our own' }).count()).toBe(0);
    await page.goto(`${app.address()}/rules/${id}`);
    await page.getByRole('heading', { name: 'Which versions it has' }).waitFor();
    expect(await page.getByRole('link', { name: 'End it' }).count()).toBe(0);
    await page.goto(`${app.address()}/rules/${id}/end`);
    await page.getByText('kept by the owner and the managers').waitFor();
    await page.goto(`${app.address()}/rules/raft-solas/change`);
    await page.getByRole('heading', { name: 'Nothing is kept' }).waitFor();
  });
});

describe('a figure of our own', () => {
  test('is refused where it would loosen law, set where it tightens it, and ended', async () => {
    const { page, kittiwakeId } = await signedIn('/due');

    await page.getByRole('button', { name: 'Liferaft, 8 persons' }).first().click();
    await page.locator('.reasoning').getByRole('link', { name: 'Put our own figure in its place' }).click();
    await page.getByRole('heading', { name: 'Our own figure for Liferaft, 8 persons' }).waitFor();
    await page.getByLabel('Our interval').fill('13 months');
    await page.getByLabel('Whose figure it is').selectOption('insurer');
    await decide(page);
    await page.getByRole('button', { name: 'Set our figure' }).click();
    await page.getByText('what binds can be tightened, never loosened').first().waitFor();
    expect(await page.getByLabel('Our interval').getAttribute('aria-invalid')).toBe('true');

    await page.getByLabel('Our interval').fill('6 months');
    await page.getByRole('button', { name: 'Set our figure' }).click();
    await page.getByRole('heading', { name: 'A figure of our own' }).waitFor();
    await page.goto(`${app.address()}/vessels/${kittiwakeId}`);
    const tightened = page.getByRole('button', { name: /^Liferaft, 8 persons: Have the liferaft serviced/ });
    await expect.poll(() => tightened.count()).toBe(2);
    await tightened.first().click();
    await page.getByRole('link', { name: 'Our own figure: who set it, and how it ends' }).click();

    await page.getByRole('button', { name: 'End it today' }).click();
    await page.getByText('This is needed.').first().waitFor();
    await page.getByLabel('Why').fill('Another insurer.');
    await page.getByRole('button', { name: 'End it today' }).click();
    await page.getByText('It counts no more from 25 Nov 2026 on: “Another insurer.”.').waitFor();
    expect(await page.getByRole('button', { name: 'End it today' }).count()).toBe(0);
  });
});
