/** The types of the client, generated from the document. */
import openapiTS, { astToString } from 'openapi-typescript';

const HEAD = '// Generated from the OpenAPI document by `npm run client`. Not for editing.\n';

export async function clientTypes(document: string): Promise<string> {
  return HEAD + astToString(await openapiTS(document, { alphabetize: true }));
}
