/** The document that the API serves, read without a socket and without a database. */
import { createApp } from '@garboard/api/app.ts';
import type { Deps } from '@garboard/api/deps.ts';
import { VERSION } from '../../apps/host/src/version.ts';

export async function servedDocument(): Promise<string> {
  const response = await createApp(withoutDatabase()).request('/openapi.json');
  return response.text();
}

/** The document is read off the routes' declarations; whoever touches the database or the store of files here is mistaken. */
function withoutDatabase(): Deps {
  const untouched = <T extends object>() =>
    new Proxy({} as T, {
      get(_, name) {
        throw new Error(`the document was about to ask for ${String(name)}`);
      },
    });
  return {
    pools: untouched<Deps['pools']>(),
    files: untouched<Deps['files']>(),
    now: () => new Date(0),
    log: () => undefined,
    version: VERSION,
  };
}
