/** A real browser for end-to-end tests: one for a test file, a context of its own for each test. */
import { mkdirSync } from 'node:fs';
import path from 'node:path';
import { AxeBuilder } from '@axe-core/playwright';
import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, onTestFinished } from 'vitest';
import { launchBrowser } from './launch-browser.ts';

const WCAG_2_2_AA = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];
const SCREENSHOTS = new URL('../../../.cache/screenshots/', import.meta.url).pathname;

export const DESKTOP = { width: 1280, height: 900 };
export const PHONE = { width: 390, height: 844 };

/** Opens a browser for the whole test file; what it gives back opens a context that is closed with its test. */
export function useBrowser(): (options?: BrowserContextOptions) => Promise<BrowserContext> {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launchBrowser();
  });
  afterAll(() => browser.close());
  return async (options = {}) => {
    const context = await browser.newContext({ viewport: DESKTOP, ...options });
    onTestFinished(() => context.close());
    return context;
  };
}

/** Nothing on the page breaks WCAG 2.2 AA as far as a program can tell; a failure names rule, element and cure. */
export async function expectNoAxeViolations(page: Page): Promise<void> {
  const { violations, passes } = await new AxeBuilder({ page }).withTags(WCAG_2_2_AA).analyze();
  const words = violations.flatMap(({ id, help, nodes }) =>
    nodes.map(({ html, failureSummary }) => `${id}: ${help}\n  ${html}\n  ${failureSummary}`),
  );
  if (words.length > 0) throw new Error(`axe on ${page.url()}:\n${words.join('\n')}`);
  expect(passes.length, 'axe looked at something').toBeGreaterThan(0);
}

/** A picture to look at: `.cache/screenshots/<name>-<theme>-<width>.png`. */
export async function takeScreenshot(page: Page, name: string, theme: 'light' | 'dark'): Promise<string> {
  mkdirSync(SCREENSHOTS, { recursive: true });
  const file = path.join(SCREENSHOTS, `${name}-${theme}-${page.viewportSize()?.width ?? 'auto'}.png`);
  await page.screenshot({ path: file, fullPage: true });
  return file;
}
