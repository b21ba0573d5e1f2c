/**
 * A short look at a started program, through HTTP and in the browser: is it there, does the door open, does it answer?
 *
 *     node tests/src/smoke.ts <address> <sign-in link>
 */
import assert from 'node:assert/strict';
import type { Page } from 'playwright-core';
import { findBrowser } from './support/browser-program.ts';
import { launchBrowser } from './support/launch-browser.ts';

const [address, link] = process.argv.slice(2);
if (!address || !link) throw new Error('usage: node tests/src/smoke.ts <address> <sign-in link>');

const PATIENCE_MS = 30_000;
const count = { passed: 0, failed: 0 };

async function check(words: string, look: () => Promise<void>): Promise<void> {
  try {
    await look();
    count.passed++;
    console.log(`ok     ${words}`);
  } catch (error) {
    count.failed++;
    console.log(`FAILED ${words}: ${(error as Error).message}`);
  }
}

const ask = (path: string) => fetch(new URL(path, address), { signal: AbortSignal.timeout(PATIENCE_MS) });

async function throughHttp(): Promise<void> {
  for (const path of ['/healthz', '/readyz']) {
    await check(`${path} answers 200`, async () => assert.equal((await ask(path)).status, 200));
  }
  await check('/openapi.json describes the API in OpenAPI 3.1', async () => {
    const { openapi, paths } = (await (await ask('/openapi.json')).json()) as { openapi: string; paths: object };
    assert.match(openapi, /^3[.]1[.]/);
    assert.ok('/v1/due' in paths, 'the due list is among its paths');
  });
  await check('the due list asks who is there, in problem+json', async () => {
    const response = await ask('/v1/due');
    assert.equal(response.status, 401);
    assert.match(response.headers.get('content-type') ?? '', /^application\/problem[+]json/);
  });
}

async function inBrowser(page: Page): Promise<void> {
  const faults: string[] = [];
  page.on('pageerror', (error) => faults.push(error.message));
  await check('the sign-in link opens the dashboard', async () => {
    await page.goto(link ?? '');
    await page.getByRole('heading', { level: 1, name: 'Who needs somebody first' }).waitFor();
  });
  await check('the due list shows rows', async () => {
    await page.getByRole('link', { name: 'Out of date' }).click();
    const things = page.locator('tr.due-line');
    await things.first().waitFor();
    assert.ok((await things.count()) > 10, 'more than a handful');
  });
  await check('a date opens its reasoning', async () => {
    await page.locator('tr.due-line button[aria-expanded=false]').first().click();
    await page.locator('tr.due-reasoning').waitFor();
  });
  await check('the link works once', async () => {
    assert.equal((await ask(new URL(link ?? '').pathname)).status, 410);
  });
  await check('no script failed on the page', async () => assert.deepEqual(faults, []));
}

await throughHttp();
console.log(`Browser: ${(await findBrowser()).words}`);
const browser = await launchBrowser();
try {
  const page = await browser.newPage();
  page.setDefaultTimeout(PATIENCE_MS);
  await inBrowser(page);
} finally {
  await browser.close();
}
console.log(`${count.passed} passed, ${count.failed} failed`);
process.exitCode = count.failed === 0 ? 0 : 1;
