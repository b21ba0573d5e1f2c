/** The dashboard's client, generated from the document that the API serves; no database is asked. */
import { createApp } from '@garboard/api/app.ts';
import type { Deps } from '@garboard/api/deps.ts';
import openapiTS, { astToString } from 'openapi-typescript';

const HEAD = '// Generated from the OpenAPI document by `npm run client`. Not for editing.\n';

export async function clientTypes(): Promise<string> {
  const response = await createApp(withoutDatabase()).request('/openapi.json');
  const document = await response.text();
  return HEAD + astToString(await openapiTS(document, { alphabetize: true }));
}

/** The document is read off the routes' declarations; whoever touches the database here is mistaken. */
function withoutDatabase(): Deps {
  const pools = new Proxy({} as Deps['pools'], {
    get(_, name) {
      throw new Error(`the document was about to ask the database (${String(name)})`);
    },
  });
  return { pools, now: () => new Date(0), log: () => undefined, version: 'client' };
}
