/** The screens of rules, of an organisation's own rules and of its own figures, and what shows that each is there. */
import type { Page } from 'playwright-core';

type Known = {
  readonly kittiwakeId: string;
  readonly raftId: string;
  readonly ownRuleId: string;
  readonly overrideId: string;
};

export const ruleScreens = (address: () => string): Record<string, (page: Page, fleet: Known) => Promise<void>> => ({
  rules: async (page) => {
    await page.goto(`${address()}/rules`);
    await page.getByRole('heading', { name: 'SOLAS', exact: true }).waitFor();
  },
  rule: async (page) => {
    await page.goto(`${address()}/rules/raft-solas`);
    await page.getByText('The same as a request').click();
    await page.locator('.worked-example pre').waitFor();
  },
  'rule-of-many-things': async (page) => {
    await page.goto(`${address()}/rules/fe-bs-insp`);
    await page.locator('.worked').first().waitFor();
  },
  'rule-without-a-date': async (page) => {
    await page.goto(`${address()}/rules/us-laidup`);
    await page.getByText('Nothing with a date of its own.').waitFor();
  },
  'own-rule-new': async (page) => {
    await page.goto(`${address()}/rules/new`);
    await page.getByLabel('Which things it is about').selectOption('gas_hose');
    await page.getByLabel('Aboard which vessels').selectOption('chosen');
    await page.getByRole('button', { name: 'Lay it down' }).click();
    await page.getByText('Not laid down yet').waitFor();
  },
  'own-rule': async (page, { ownRuleId }) => {
    await page.goto(`${address()}/rules/${ownRuleId}`);
    await page.getByRole('progressbar', { name: 'How far the change is' }).waitFor();
  },
  'own-rule-end': async (page, { ownRuleId }) => {
    await page.goto(`${address()}/rules/${ownRuleId}/end`);
    await page.getByRole('button', { name: 'End the rule' }).waitFor();
  },
  'own-figure-set': async (page, { kittiwakeId, raftId }) => {
    await page.goto(`${address()}/vessels/${kittiwakeId}/figure?item=${raftId}&rule=raft-solas&duty=service`);
    await page.getByLabel('Our interval').fill('13 months');
    await page.getByLabel('Who decided it').fill('Anna Berg');
    await page.getByLabel('Why').fill('cheaper');
    await page.getByLabel('Where it stands in writing').fill('nowhere yet');
    await page.getByRole('button', { name: 'Set our figure' }).click();
    await page.getByText('never loosened').first().waitFor();
  },
  'own-figure': async (page, { overrideId }) => {
    await page.goto(`${address()}/overrides/${overrideId}`);
    await page.getByRole('button', { name: 'End it today' }).waitFor();
  },
});
