/** The document that the API serves, read without a socket and without a database. */
import { createApp } from '@garboard/api/app.ts';
import type { Deps } from '@garboard/api/deps.ts';
import { VERSION } from '../../apps/host/src/version.ts';

export async function servedDocument(): Promise<string> {
  const response = await createApp(withoutDatabase()).request('/openapi.json');
  return response.text();
}

/** The document is read off the routes' declarations; whoever touches the database here is mistaken. */
function withoutDatabase(): Deps {
  const pools = new Proxy({} as Deps['pools'], {
    get(_, name) {
      throw new Error(`the document was about to ask the database (${String(name)})`);
    },
  });
  return { pools, now: () => new Date(0), log: () => undefined, version: VERSION };
}
