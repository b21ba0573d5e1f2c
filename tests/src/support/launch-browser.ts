import { type Browser, chromium } from 'playwright-core';
import { findBrowser } from './browser-program.ts';

/** Tests run as root in containers, where Chromium's own sandbox cannot be had. */
const FLAGS = ['--no-sandbox', '--disable-gpu', '--disable-background-networking', '--no-first-run'];

export async function launchBrowser(): Promise<Browser> {
  const { executablePath, env } = await findBrowser();
  return chromium.launch({ executablePath, args: FLAGS, env: { ...(process.env as Record<string, string>), ...env } });
}
