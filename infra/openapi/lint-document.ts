/** What the linter finds in a document, in words with places; nothing when it is clean. */
import spectral from '@stoplight/spectral-core';
import { RULESET } from './ruleset.ts';

export async function lintDocument(text: string): Promise<string[]> {
  const linter = new spectral.Spectral();
  linter.setRuleset(RULESET);
  const found = await linter.run(JSON.parse(text));
  return found.map(({ code, path, message }) => `${code}: /${path.join('/')}: ${message}`);
}
