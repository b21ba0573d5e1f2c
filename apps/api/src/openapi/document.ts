/** The served OpenAPI document: generated from the routes, with what they have in common said once. */
import type { OpenAPIHono } from '@hono/zod-openapi';
import type { ApiEnv, Contact, Deps } from '../deps.ts';
import { withWhatAllHaveInCommon } from './in-common.ts';

/** In the order of the alphabet. */
const TAGS = [
  { name: 'Account', description: 'A person’s own account, the same in every organisation.' },
  { name: 'Audit', description: 'Who changed what, as a chain that can be checked.' },
  { name: 'Catalogue', description: 'The rules with their sources, the kinds of item, the schemes.' },
  { name: 'Due list', description: 'What is out of date across the fleet, and why.' },
  {
    name: 'Evidence',
    description: 'Photographs and papers: how they come here piece by piece, and what is shown of them.',
  },
  {
    name: 'Findings',
    description: 'What is not right aboard, and how it stands with putting it right, until somebody else has looked.',
  },
  { name: 'Items', description: 'Things aboard, the facts about them, and what follows from the facts.' },
  { name: 'Keys', description: 'The keys of programs: what each may do, and until when.' },
  { name: 'Links for outsiders', description: 'What is shown to somebody outside, until when, and who looked.' },
  { name: 'Organisations', description: 'The organisation one is at, and those one belongs to.' },
  { name: 'People', description: 'Who works in the organisation, what each may do, and invitations.' },
  {
    name: 'Safety notices',
    description: 'What makers and authorities say of certain things, which ones aboard they cover, and the answers.',
  },
  { name: 'Service', description: 'For whoever runs the program.' },
  { name: 'Session', description: 'Whom a credential stands for.' },
  { name: 'Vessels', description: 'The register: boats, what they are doing, what happened to them.' },
  {
    name: 'Visits',
    description:
      'Survey visits: the route walked, what could not be examined, who must look closer; sealed when completed.',
  },
];

/** Where nobody said who runs it. RFC 2142, section 5: every domain that takes mail has a postmaster; RFC 6761: nothing under localhost leaves the machine. */
const SOMEBODY: Contact = {
  name: 'Whoever runs this server',
  url: 'http://localhost/docs',
  email: 'postmaster@server.localhost',
};

const DESCRIPTION = `Keeps dates and records for a fleet of small craft: facts about things aboard, the rules that bear on them, and what is due when, with the reasoning.

This program keeps dates and records; it does not make a vessel safe. Flag state, local law and the maker's instructions come first. Gas, rigging, engines, electrics, liferafts and fixed fire systems are for licensed or otherwise competent people. A rule shown as common practice has no source. Nothing recorded against a vessel is not the same as safe: the skipper decides.

Every failure is an RFC 9457 problem whose \`type\` resolves to a page. Lists are keyset pages: follow \`nextCursor\` or the \`Link\` header.`;

type About = Pick<Deps, 'version' | 'contact'>;
type Document = ReturnType<OpenAPIHono<ApiEnv>['getOpenAPI31Document']>;

export function openApiDocument(app: OpenAPIHono<ApiEnv>, { version, contact = SOMEBODY }: About): Document {
  const registry = app.openAPIRegistry;
  registry.registerComponent('securitySchemes', 'apiKey', {
    type: 'http',
    scheme: 'bearer',
    description: 'An API key, `gbk_…`.',
  });
  registry.registerComponent('securitySchemes', 'session', {
    type: 'apiKey',
    in: 'cookie',
    name: 'garboard_session',
    description:
      'The cookie of a person who has signed in at `/auth` or by a one-time link. A change must come from this host’s own pages. The doors under `/auth` are the accounts’ library’s own and are not part of this document.',
  });
  const document = app.getOpenAPI31Document({
    openapi: '3.1.0',
    info: {
      title: 'Garboard',
      version,
      description: DESCRIPTION,
      contact,
      license: { name: 'AGPL-3.0-or-later', url: 'https://www.gnu.org/licenses/agpl-3.0.html' },
    },
    servers: [{ url: '/', description: 'This server.' }],
    tags: TAGS,
  });
  const { webhooks: none, ...rest } = withWhatAllHaveInCommon(document);
  return rest;
}
