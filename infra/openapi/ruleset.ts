/** What a linter holds against the served document: every rule of `spectral:oas`, and our own. No exceptions. */
import type { RuleDefinition, RulesetDefinition } from '@stoplight/spectral-core';
import { pattern, schema, truthy } from '@stoplight/spectral-functions';
import { oas } from '@stoplight/spectral-rulesets';
import { guarded, refusesWell, repeatable, tellsPages, unlisted, versionAsked } from './rule-functions.ts';

const OPERATION = '$.paths[*][get,post,put,patch,delete]';
const WRITE = '$.paths[*][post,put,patch,delete]';
const ASKED = `${OPERATION}.requestBody.content['application/json'].schema`;

/** The linter's own word, which would make the object look like a promise. */
const THEN = 'then';

const rule = (description: string, given: string, check: RuleDefinition['then']) => ({
  description,
  severity: 'error' as const,
  given,
  [THEN]: check,
});
const named = (description: string, given: string, match: string) =>
  rule(description, given, { function: pattern, functionOptions: { match } });

export const OUR_RULES = {
  'operation-id-verb-first': named(
    'An operationId is a verb and what it is done to, in camelCase: listVessels.',
    `${OPERATION}.operationId`,
    '^[a-z]+([A-Z][a-z0-9]*)+$',
  ),
  'path-kebab-case': named(
    'A path is made of words-with-hyphens and {camelCase} parameters.',
    '$.paths[*]~',
    '^(/([a-z0-9]+(-[a-z0-9]+)*|\\{[a-z][A-Za-z]*\\}))+([.][a-z]+)?$',
  ),
  'property-camel-case': named(
    'A property is named in camelCase; a code that stands as a name may have underscores.',
    '$.components.schemas[*].properties[*]~',
    '^[a-z][A-Za-z0-9]*(_[a-z]+)*$',
  ),
  'parameter-camel-case': named(
    'A parameter in a path or a query is named in camelCase.',
    `${OPERATION}.parameters[?(@.in != 'header')].name`,
    '^[a-z][A-Za-z0-9]*$',
  ),
  'parameter-told': rule(
    'A parameter in a query or a header says what it is for.',
    `${OPERATION}.parameters[?(@.in != 'path')]`,
    { field: 'description', function: truthy },
  ),
  'request-example': rule('What is asked for has an example.', ASKED, { field: 'example', function: truthy }),
  'object-at-top': rule(
    'An answer is an object, so that something can be added to it later.',
    `${OPERATION}.responses[*].content['application/json'].schema`,
    {
      function: schema,
      functionOptions: { schema: { properties: { type: { const: 'object' } }, required: ['type'] } },
    },
  ),
  'problem-for-every-refusal': rule('Every refusal is an RFC 9457 problem with an example of each type.', OPERATION, {
    function: refusesWell,
  }),
  'write-guarded': rule('What writes asks for a credential, and can be refused.', WRITE, { function: guarded }),
  'post-repeatable': rule('A POST with a body takes an Idempotency-Key.', '$.paths[*].post', { function: repeatable }),
  'change-versioned': rule(
    'A PATCH, PUT or DELETE asks for If-Match, and declares 412 and 428.',
    '$.paths[*][patch,put,delete]',
    { function: versionAsked },
  ),
  'list-paged': rule(
    'What answers with a cursor takes `limit` and `cursor`, tells `Link`, and is called list….',
    '$.paths[*].get',
    { function: tellsPages },
  ),
  'no-unknown-parts': rule('An object that is asked for takes nothing that it does not name.', ASKED, {
    function: unlisted,
  }),
};

export const RULESET: RulesetDefinition = {
  // Its own types say what it needs of newer ones, not that it is one.
  extends: [[oas as unknown as RulesetDefinition, 'all']],
  rules: OUR_RULES,
};
