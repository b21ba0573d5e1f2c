import type { Page } from 'playwright-core';
import { beforeAll, expect, test } from 'vitest';
import { expectNoAxeViolations, takeScreenshot, useBrowser } from '../support/browser.ts';
import { aPhotograph } from '../support/evidence.ts';
import { anOwnRule } from '../support/own-rules.ts';
import { aPerson } from '../support/people.ts';
import { useStartedApp, watchedPage } from '../support/started-app.ts';
import { anOverride, aVessel } from '../support/vessels.ts';
import { aSealedVisit, aShortRoute } from '../support/visits.ts';
import { foundScreens } from './found-screens.ts';
import { ruleScreens } from './rule-screens.ts';
import { type SmallFleet, smallFleetWithFindings } from './small-fleet.ts';

const browser = useBrowser();
const app = useStartedApp();

const THEMES = ['light', 'dark'] as const;
const WIDTHS = [1440, 820, 390] as const;

type Fleet = SmallFleet & {
  readonly hoseId: string;
  readonly visitId: string;
  readonly sealedId: string;
  readonly pictureId: string;
  readonly ownRuleId: string;
  readonly overrideId: string;
  readonly surveyorEmail: string;
};
let fleet: Fleet;
beforeAll(async () => {
  const small = await smallFleetWithFindings();
  const ctx = small.organisation.ctx();
  const { id } = await anOwnRule(ctx, { kinds: ['standing_rigging_wire', 'hand_flare'] });
  const override = await anOverride(ctx, small.dunlinId);
  const { email } = await aPerson(small.organisation, { role: 'surveyor', vesselIds: [small.kittiwakeId] });
  const dinghy = await aVessel(ctx, [], 'Sprat');
  await aShortRoute(ctx);
  const sealed = await aSealedVisit(ctx, dinghy.id);
  const at = { zone: 'fire_gear', point: 'extinguisher, companionway', words: 'Gauge of the extinguisher' };
  await aPhotograph(ctx, small.kittiwakeId, { ...at, takenOn: '2025-11-01' });
  const pictureId = await aPhotograph(ctx, small.kittiwakeId, { ...at, takenOn: '2026-11-24' });
  fleet = { ...small, pictureId, sealedId: sealed.id, ownRuleId: id, overrideId: override.id, surveyorEmail: email };
});

/** Every screen, and what shows that it is there. */
const SCREENS: Record<string, (page: Page, fleet: Fleet) => Promise<void>> = {
  fleet: async (page) => {
    await page.goto(`${app.address()}/`);
    await page.locator('a.horizon-target').first().waitFor();
  },
  'fleet-as-a-table': async (page) => {
    await page.goto(`${app.address()}/?fleet=table`);
    await page.locator('.horizon-table').waitFor();
  },
  'finding-by-name': async (page) => {
    await page.goto(`${app.address()}/`);
    await page.getByRole('button', { name: 'Find …' }).click();
    await page.keyboard.type('lifer');
    await page.getByRole('option').filter({ hasText: 'Liferaft, 8 persons' }).waitFor();
  },
  season: async (page) => {
    await page.goto(`${app.address()}/season`);
    await page.getByRole('button', { name: 'Set the season' }).waitFor();
  },
  'due-list': async (page) => {
    await page.goto(`${app.address()}/due`);
    await page.locator('.no-date .due-line').first().waitFor();
  },
  'due-list-reasoning': async (page) => {
    await page.goto(`${app.address()}/due`);
    await page.getByRole('button', { name: 'Liferaft, 8 persons' }).first().click();
    await page.locator('.reasoning .caution-words').waitFor();
  },
  'due-list-bulk': async (page) => {
    await page.goto(`${app.address()}/due`);
    await page
      .getByRole('checkbox', { name: /Liferaft, 8 persons/ })
      .first()
      .check();
    await page.getByRole('button', { name: 'Record a fact for it' }).click();
    await page
      .getByRole('dialog')
      .getByRole('button', { name: /^Record for/ })
      .click();
    await page.getByText('Not recorded yet').waitFor();
  },
  'due-list-saving': async (page) => {
    await page.goto(`${app.address()}/due?standing=overdue`);
    await page.getByRole('button', { name: 'Save this view …' }).click();
    await page.getByLabel('Everybody here sees it').waitFor();
  },
  'due-list-choosing': async (page) => {
    await page.goto(`${app.address()}/due`);
    await page.locator('.due-line').first().waitFor();
    await page.getByRole('combobox', { name: 'kind: any' }).click();
    await page.getByRole('option', { name: 'any' }).waitFor();
  },
  'nothing-matches': async (page) => {
    await page.goto(`${app.address()}/due?standing=overdue&scheme=bs5306`);
    await page.getByText('Nothing answers to these words.').waitFor();
  },
  'what-is-known-of-her': async (page, { kittiwakeId }) => {
    await page.goto(`${app.address()}/vessels/${kittiwakeId}/change`);
    await page.getByText('What they say').waitFor();
  },
  'what-a-thing-is': async (page, { raftId }) => {
    await page.goto(`${app.address()}/items/${raftId}/change`);
    await page.getByText('What its rules ask besides dates').waitFor();
  },
  ...foundScreens(app.address),
  vessels: async (page) => {
    await page.goto(`${app.address()}/vessels`);
    await page.getByRole('row', { name: /Kittiwake/ }).waitFor();
  },
  vessel: async (page, { kittiwakeId }) => {
    await page.goto(`${app.address()}/vessels/${kittiwakeId}`);
    await page
      .getByRole('button', { name: /^Liferaft, 8 persons: / })
      .first()
      .click();
    await page.locator('.reasoning .caution-words').waitFor();
  },
  'record-fact': async (page, { kittiwakeId, raftId }) => {
    await page.goto(`${app.address()}/vessels/${kittiwakeId}/record?item=${raftId}&fact=serviced`);
    await page.getByLabel('When').fill('03/04/2026');
    await page.getByRole('button', { name: 'Record', exact: true }).click();
    await page.getByText('Not recorded yet').waitFor();
  },
  'add-thing': async (page, { dunlinId }) => {
    await page.goto(`${app.address()}/vessels/${dunlinId}/add`);
    await page.getByLabel('What kind of thing').selectOption('gas_hose');
    await page.getByText('licensed gas engineer').waitFor();
  },
  'add-thing-suggested': async (page, { kittiwakeId }) => {
    await page.goto(`${app.address()}/vessels/${kittiwakeId}/add`);
    await page.getByLabel('What kind of thing').selectOption('liferaft');
    await page.getByRole('region', { name: 'What the rules will ask of it' }).waitFor();
    await page.getByLabel('What it is called aboard').fill('hose');
    await page.getByRole('button', { name: 'Gas (LPG) hose' }).waitFor();
  },
  'enter-vessel': async (page) => {
    await page.goto(`${app.address()}/vessels/new`);
    await page.getByLabel('Start from').selectOption('Safety boat');
    await page.getByRole('checkbox', { name: /: Battery$/ }).uncheck();
    await page.getByRole('group', { name: 'Outboard engine' }).getByLabel('Called').fill('');
    await page.getByRole('button', { name: 'Enter her' }).click();
    await page.getByText('Not entered yet').waitFor();
  },
  ...ruleScreens(app.address),
  people: async (page) => {
    await page.goto(`${app.address()}/people`);
    await page
      .getByRole('row')
      .filter({ hasText: fleet.surveyorEmail })
      .getByRole('button', { name: /^Change/ })
      .click();
    await page.locator('.changing').getByLabel('Kittiwake').uncheck();
    await page.getByRole('button', { name: 'Save' }).click();
    await page.getByText('names no vessel yet').first().waitFor();
  },
  keys: async (page) => {
    await page.goto(`${app.address()}/keys`);
    await page.getByLabel('Which program it is for').fill('tide board');
    await page.getByRole('button', { name: 'Make the key' }).click();
    await page.getByRole('heading', { name: 'The key of tide board' }).waitFor();
    await page.getByRole('button', { name: 'Renew tide board' }).first().click();
    await page.getByLabel('The old text works').waitFor();
  },
  changes: async (page, { kittiwakeId }) => {
    await page.goto(`${app.address()}/changes?vessel=${kittiwakeId}`);
    await page
      .getByRole('button', { name: /^Before and after: recorded a fact/ })
      .first()
      .click();
    await page.locator('.differences').waitFor();
  },
  shares: async (page, { kittiwakeId }) => {
    await page.goto(`${app.address()}/shares?vessel=${kittiwakeId}`);
    await page.getByLabel('For whom, and what for').fill('insurer');
    await page.getByRole('button', { name: 'Make the link' }).click();
    await page.getByRole('heading', { name: 'The link for insurer' }).waitFor();
  },
  account: async (page) => {
    await page.goto(`${app.address()}/account`);
    await page.getByText('this browser').waitFor();
    await page.getByText('Add a passkey').first().click();
  },
  'not-here': async (page) => {
    await page.goto(`${app.address()}/no/such/page`);
    await page.getByRole('heading', { name: 'Nothing is kept' }).waitFor();
  },
};

/** Pages for whoever is not signed in: where, and under which heading. */
const OUTSIDE: Record<string, readonly [string, string]> = {
  'signed-out': ['/due', 'Who is there?'],
  'sign-up': ['/sign-up', 'An account for yourself'],
  forgotten: ['/forgotten', 'A new password'],
  'new-password': ['/new-password/made-up', 'Set a new password'],
  'verify-address': ['/verify/made-up', 'Is this your address?'],
  'shared-over': ['/shared#gbs_made-up', 'This link shows nothing any more'],
  'invitation-over': ['/invitation/made-up', 'This invitation does not open any more'],
};

test.each(Object.keys(SCREENS))(
  '%s: axe finds nothing on a desk or a phone by day or by night, and nothing runs off the side at any width',
  async (name) => {
    const page = await app.signIn(await browser({ viewport: { width: 1440, height: 900 } }), fleet.organisation);
    await SCREENS[name]?.(page, fleet);
    await lookAtAllSizes(page, name, [1440, 390]);
  },
);

test.each(Object.keys(OUTSIDE))('%s: axe finds nothing by day or by night', async (name) => {
  const page = await watchedPage(await browser({ viewport: { width: 1440, height: 900 } }));
  const [path = '', heading = ''] = OUTSIDE[name] ?? [];
  await page.goto(`${app.address()}${path}`);
  await page.getByRole('heading', { name: heading }).waitFor();
  await lookAtAllSizes(page, name, WIDTHS);
});

/** The page stays open while the window changes its size and the device its day: night only changes colours. */
async function lookAtAllSizes(page: Page, name: string, withAxe: readonly number[]): Promise<void> {
  for (const width of WIDTHS) {
    await page.setViewportSize({ width, height: width === 390 ? 844 : 900 });
    for (const theme of THEMES) {
      await page.emulateMedia({ colorScheme: theme });
      await takeScreenshot(page, name, theme);
      if (withAxe.includes(width)) await expectNoAxeViolations(page);
      expect(await overflow(page), `${name} at ${width}`).toBeLessThanOrEqual(0);
    }
  }
}

/** How many pixels wider than the window the page is. */
const overflow = (page: Page) =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
