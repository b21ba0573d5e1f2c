/** The browser and the eyes of the other end-to-end tests: they see what is there to see. */
import { existsSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { DESKTOP, expectNoAxeViolations, PHONE, takeScreenshot, useBrowser } from '../support/browser.ts';

const openContext = useBrowser();
const page = (body: string) =>
  `<!doctype html><html lang="en"><title>Trial</title><main><h1>Trial</h1>${body}</main></html>`;

describe('the check by axe', () => {
  it('passes a page that is as it should be', async () => {
    const tab = await (await openContext()).newPage();
    await tab.setContent(page('<label>Name <input></label>'));

    await expectNoAxeViolations(tab);
  });

  it('names an input that has no label', async () => {
    const tab = await (await openContext()).newPage();
    await tab.setContent(page('<input id="planted">'));

    await expect(expectNoAxeViolations(tab)).rejects.toThrow(/label: .*\n.*planted/);
  });
});

describe('a context', () => {
  it('keeps nothing of another one', async () => {
    const [first, second] = [await openContext(), await openContext()];
    await first.addCookies([{ name: 'session', value: 'x', url: 'http://127.0.0.1' }]);

    expect(await second.cookies('http://127.0.0.1')).toEqual([]);
  });

  it('is as wide as it was asked to be', async () => {
    for (const viewport of [DESKTOP, PHONE]) {
      const tab = await (await openContext({ viewport })).newPage();

      expect(await tab.evaluate('innerWidth')).toBe(viewport.width);
    }
  });

  it('can be photographed', async () => {
    const tab = await (await openContext({ viewport: PHONE })).newPage();
    await tab.setContent(page(''));
    const file = await takeScreenshot(tab, 'trial', 'light');

    expect(file).toMatch(/trial-light-390[.]png$/);
    expect(existsSync(file)).toBe(true);
  });
});
