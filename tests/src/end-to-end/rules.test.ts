import { describe, expect, test } from 'vitest';
import { useBrowser } from '../support/browser.ts';
import { useStartedApp } from '../support/started-app.ts';
import { smallFleet } from './small-fleet.ts';

const browser = useBrowser();
const app = useStartedApp();

async function signedIn(path: string) {
  const fleet = await smallFleet();
  const page = await app.signIn(await browser(), fleet.organisation);
  await page.goto(app.address() + path);
  return { page, ...fleet };
}

describe('the rules', () => {
  test('are found from every page, and say where each stands and how far that was checked', async () => {
    const { page } = await signedIn('/due');

    await page.getByRole('navigation').getByRole('link', { name: 'Rules' }).click();
    await page.getByRole('heading', { name: 'Which rules a date can come from' }).waitFor();
    const raft = page.locator('.rule-line', { hasText: 'III/20.8.1' }).first();
    await raft.waitFor();

    expect(await raft.textContent()).toMatch(/liferaft is serviced.*By law.*SOLAS III\/20\.8\.1.*read in the text/s);
    const practice = page.locator('.rule-line', { hasText: 'common practice, no source' });
    await expect.poll(() => practice.count()).toBeGreaterThan(10);
  });

  test('are narrowed by words that stay in the address, and shown whole again', async () => {
    const { page } = await signedIn('/rules');

    await page.getByRole('combobox', { name: 'thing: any' }).click();
    await page.getByRole('option', { name: 'gas (LPG) hose', exact: true }).click();
    await expect.poll(() => new URL(page.url()).searchParams.get('kind')).toBe('gas_hose');
    await expect.poll(() => page.locator('.rule-line').count()).toBeLessThan(5);

    await page.reload();
    await page.getByRole('combobox', { name: 'thing: gas (LPG) hose' }).waitFor();
    await page.goto(`${app.address()}/rules?kind=gas_hose&weight=law&scheme=bs5306`);
    await page.getByText('No rule answers to these words.').waitFor();
    await page.getByRole('button', { name: 'Show every rule' }).click();
    await page.locator('.rule-line').nth(90).waitFor();
  });
});

describe('a rule’s page', () => {
  test('says what it asks, of what, who starts the clock anew, what it reads and where it stands', async () => {
    const { page } = await signedIn('/rules/raft-solas');

    await page.getByRole('heading', { name: 'Inflatable liferaft: what SOLAS asks' }).waitFor();
    const text = (await page.locator('.rule').textContent()) ?? '';
    expect(text).toContain('The clock starts anew when it is serviced by an approved liferaft service station.');
    expect(text).toContain('Read in the text.');
    const caution = text.indexOf('opened, inflated and packed only by an approved service station');
    expect(caution).toBeGreaterThan(0);
    expect(caution, 'what must be heeded stands before what there is to do').toBeLessThan(text.indexOf('What it asks'));
    expect(await page.locator('.reads code').allTextContents()).toEqual(
      expect.arrayContaining(['serviced', 'extended']),
    );
    expect(await page.getByRole('link', { name: 'SOLAS, III/20.8.1' }).getAttribute('href')).toMatch(/^http/);
  });

  test('works an example out, and the request that it shows gives the same answer', async () => {
    const { page, organisation } = await signedIn('/rules/raft-solas');

    const sentence = await page.locator('.worked .voice').first().textContent();
    await page.getByText('The same as a request').click();
    const request = await page.locator('.worked-example pre').textContent();
    const answer = await fetch(`${app.address()}/v1/due-dates/explain`, {
      method: 'POST',
      headers: { 'content-type': 'application/json', authorization: `Bearer ${await organisation.key('viewer')}` },
      body: request,
    });

    expect(answer.status).toBe(200);
    const { items } = (await answer.json()) as { items: { explanation: { sentence: string } }[] };
    expect(items.map(({ explanation }) => explanation.sentence)).toContain(sentence);
  });

  test('says in words where a figure is from memory or nobody’s, and leaves an example out that would not be natural', async () => {
    const { page } = await signedIn('/rules/eng-oil');

    await page.locator('.rule-side', { hasText: 'Common practice, no source.' }).waitFor();
    expect(await page.locator('.worked-example').count()).toBe(0);

    await page.goto(`${app.address()}/rules/pyro-ca`);
    await page.locator('.rule-side', { hasText: 'From memory.' }).waitFor();
  });

  test('is one step from a date in the due list and from its reasoning', async () => {
    const { page } = await signedIn('/due');

    await page.getByRole('button', { name: 'Liferaft, 8 persons' }).first().click();
    await page
      .locator('.reasoning')
      .getByRole('link', { name: /^SOLAS III\/20\.8\.1, read in the text/ })
      .click();
    await page.waitForURL(/\/rules\/raft-solas$/);
    await page.goBack();
    await page.locator('.due-line').first().getByRole('link', { name: 'SOLAS III/20.8.1' }).click();
    await page.waitForURL(/\/rules\/raft-solas$/);
  });

  test('of a rule that is not there says so', async () => {
    const { page } = await signedIn('/rules/raft-of-the-medusa');

    await page.getByRole('heading', { name: 'Nothing is kept' }).waitFor();
  });
});

describe('a vessel’s identifiers', () => {
  test('stand on her page as written, with what they say and where they do not agree', async () => {
    const { page, kittiwakeId, dunlinId } = await signedIn('/vessels');

    await page.goto(`${app.address()}/vessels/${kittiwakeId}`);
    const told = page.getByRole('region', { name: 'How she is identified' });
    await told.waitFor();
    expect(await told.textContent()).toMatch(/HINGB-QZX00042C898 built by QZX.*March 1998/);
    expect(await told.textContent()).toContain('the vessel is on record as built in 2001');

    await page.goto(`${app.address()}/vessels/${dunlinId}`);
    await page.getByRole('heading', { name: 'From keel to masthead' }).waitFor();
    expect(await told.count()).toBe(0);
  });
});

describe('adding a thing', () => {
  test('its kind is suggested from plain words, and its duties under her schemes are shown at once', async () => {
    const { page, kittiwakeId, dunlinId } = await signedIn('/vessels');

    await page.goto(`${app.address()}/vessels/${kittiwakeId}/add`);
    await page.getByLabel('What it is called aboard').fill('6-person liferaf');
    await page.getByRole('button', { name: 'Inflatable liferaft' }).click();
    expect(await page.getByLabel('What kind of thing').inputValue()).toBe('liferaft');
    expect(await page.locator('.suggestions button').count()).toBe(0);
    const brings = page.getByRole('region', { name: 'What the rules will ask of it' });
    await brings.getByText('Have the liferaft serviced at an approved station').waitFor();
    expect(await brings.textContent()).toContain('by law · SOLAS III/20.8.1');

    await page.goto(`${app.address()}/vessels/${dunlinId}/add`);
    await page.getByLabel('What kind of thing').selectOption('liferaft');
    await brings.waitFor();
    expect(await brings.textContent()).not.toContain('SOLAS');
  });

  test('nothing is suggested for words that fit no kind', async () => {
    const { page, kittiwakeId } = await signedIn('/vessels');

    await page.goto(`${app.address()}/vessels/${kittiwakeId}/add`);
    await page.getByLabel('What it is called aboard').fill('fire blanket');
    await page.getByRole('button', { name: 'Fire blanket' }).waitFor();
    await page.getByLabel('What it is called aboard').fill('cuddly toy');
    await page.locator('.suggestions button').waitFor({ state: 'detached' });
  });
});
