/** The screens of findings and visits, and what shows that each is there. */
import type { Page } from 'playwright-core';

type Known = {
  readonly kittiwakeId: string;
  readonly hoseId: string;
  readonly visitId: string;
  readonly sealedId: string;
  readonly pictureId: string;
};

export const foundScreens = (address: () => string): Record<string, (page: Page, fleet: Known) => Promise<void>> => ({
  findings: async (page) => {
    await page.goto(`${address()}/findings`);
    await page.getByRole('link', { name: 'Gas hose cracked at the cooker' }).waitFor();
  },
  'findings-by-trade': async (page) => {
    await page.goto(`${address()}/findings?group=trade`);
    await page.getByRole('heading', { name: /Gas engineer/ }).waitFor();
  },
  'findings-of-the-week': async (page) => {
    await page.goto(`${address()}/findings?show=week`);
    await page.getByRole('heading', { name: /Gas engineer/ }).waitFor();
  },
  'one-finding': async (page, { hoseId }) => {
    await page.goto(`${address()}/findings/${hoseId}`);
    await page.getByText('Bent hard behind the cooker.').waitFor();
  },
  'one-finding-reporting': async (page, { hoseId }) => {
    await page.goto(`${address()}/findings/${hoseId}?do=report_done`);
    await page.getByLabel('What was done').waitFor();
  },
  'new-finding': async (page, { kittiwakeId }) => {
    await page.goto(`${address()}/vessels/${kittiwakeId}/finding`);
    await page.getByLabel('Where aboard').selectOption('gas_installation');
    await page.getByLabel('What is not right').fill('Hose perished');
    await page.getByText('Perhaps it is on record already').waitFor();
  },
  photographs: async (page, { kittiwakeId }) => {
    await page.goto(`${address()}/vessels/${kittiwakeId}/photographs`);
    await page.locator('.strip .picture').nth(1).waitFor();
  },
  'one-photograph': async (page, { pictureId }) => {
    await page.goto(`${address()}/evidence/${pictureId}`);
    await page.getByText('Fingerprint (SHA-256)').waitFor();
  },
  visits: async (page) => {
    await page.goto(`${address()}/visits`);
    await page.getByRole('link', { name: '24 Nov 2026' }).waitFor();
  },
  'survey-route': async (page) => {
    await page.goto(`${address()}/survey-routes/motor_boat`);
    await page.getByRole('button', { name: 'Deck, fittings and hatches: one up' }).waitFor();
  },
  'one-visit': async (page, { visitId }) => {
    await page.goto(`${address()}/visits/${visitId}`);
    await page.getByText('Gas hose cracked at the cooker').waitFor();
  },
  'one-visit-sealed': async (page, { sealedId }) => {
    await page.goto(`${address()}/visits/${sealedId}`);
    await page.getByRole('link', { name: 'Take the sealed copy' }).waitFor();
  },
  'new-visit': async (page, { kittiwakeId }) => {
    await page.goto(`${address()}/vessels/${kittiwakeId}/visit`);
    await page.getByLabel('What for').waitFor();
  },
});
