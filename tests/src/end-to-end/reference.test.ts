/** The reference for people at /docs: drawn in a real browser, under our own rules for what a page may load. */
import { serve } from '@garboard/api/serve.test-support.ts';
import { afterAll, describe, expect, it } from 'vitest';
import { app, document } from '../support/api.ts';
import { useBrowser } from '../support/browser.ts';

const server = await serve(app);
afterAll(() => server.close());
const newContext = useBrowser();

describe('the reference for people', () => {
  it('shows every group of operations, asks no other host, and breaks no rule of the page', async () => {
    const page = await (await newContext()).newPage();
    const complaints: string[] = [];
    const elsewhere: string[] = [];
    page.on('console', (message) => message.type() === 'error' && complaints.push(message.text()));
    page.on('pageerror', (error) => complaints.push(String(error)));
    page.on('request', (request) => {
      const url = request.url();
      if (!url.startsWith(server.address) && !url.startsWith('data:')) elsewhere.push(url);
    });

    await page.goto(`${server.address}/docs`);
    await page.getByText('/v1/due-dates/explain').waitFor();
    await page.getByText('/v1/due-dates/explain').click();
    await page.getByRole('button', { name: 'Try it out' }).waitFor();

    const groups = await page
      .locator('.opblock-tag')
      .evaluateAll((tags) => tags.map((tag) => tag.getAttribute('data-tag')));
    expect(groups).toEqual(document.tags.map(({ name }) => name));
    expect(elsewhere).toEqual([]);
    expect(complaints).toEqual([]);
  });
});
