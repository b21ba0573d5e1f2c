/** How routes declare themselves: one way to say what is asked, answered and refused. */
import { Problem, type ProblemType } from '@garboard/contract/problem.ts';
import { Id } from '@garboard/contract/shared.ts';
import { CraftCode } from '@garboard/contract/survey-visit/codes.ts';
import { OpenAPIHono, z } from '@hono/zod-openapi';
import type { ApiEnv } from '../deps.ts';
import { PROBLEMS, type StatusOf } from '../problem/problem-table.ts';
import { MAX_BODY_BYTES, MAX_BODY_DEPTH, MAX_PIECE_BYTES } from '../request/limits.ts';
import { OCTETS } from '../request/octet-body.ts';
import { refuseInvalid } from '../request/refuse-invalid.ts';

export const routes = () => new OpenAPIHono<ApiEnv>({ defaultHook: refuseInvalid });

/** Either will do: a program's key, or the cookie of somebody signed in. */
export const SIGNED_IN = [{ apiKey: [] }, { session: [] }];
/** A program's key stands for no person. */
export const PERSON = [{ session: [] }];
export const ANYBODY: Record<string, string[]>[] = [];

export const json = <T extends z.ZodType>(schema: T, description: string) => ({
  description,
  content: { 'application/json': { schema } },
});

export const page = <T extends z.ZodType>(schema: T, description: string) => ({
  ...json(schema, description),
  headers: z.object({ Link: z.string().optional().meta({ description: 'RFC 8288: the next page, `rel="next"`.' }) }),
});

const etag = z.string().meta({ description: 'The version, for `If-None-Match` and `If-Match`.', example: '"3"' });

export const versioned = <T extends z.ZodType>(schema: T, description: string) => ({
  ...json(schema, description),
  headers: z.object({ ETag: etag }),
});

const replayed = z
  .string()
  .optional()
  .meta({ description: '`true` when an earlier request with this `Idempotency-Key` had this answer.' });

export const changed = <T extends z.ZodType>(schema: T, description: string) => ({
  ...json(schema, description),
  headers: z.object({ ETag: etag, 'Idempotency-Replayed': replayed }),
});

const location = z.string().meta({ description: 'Where it can be read.' });

export const created = <T extends z.ZodType>(schema: T, description: string) => ({
  ...json(schema, description),
  headers: z.object({ ETag: etag, Location: location, 'Idempotency-Replayed': replayed }),
});

/** A creation without a page of its own: it is read in its list. */
export const listed = <T extends z.ZodType>(schema: T, description: string) => ({
  ...json(schema, description),
  headers: z.object({ Location: location, 'Idempotency-Replayed': replayed }),
});

/** An answer to a write that makes no one thing. */
export const settled = <T extends z.ZodType>(schema: T, description: string) => ({
  ...json(schema, description),
  headers: z.object({ 'Idempotency-Replayed': replayed }),
});

/** An answer without a body to a request that can be repeated. */
export const gone = (description: string) => ({
  description,
  headers: z.object({ 'Idempotency-Replayed': replayed }),
});

export const body = <T extends z.ZodType>(schema: T) => ({
  required: true,
  description: `JSON in UTF-8: at most ${MAX_BODY_BYTES / 1024} kB, nested at most ${MAX_BODY_DEPTH} deep, no name twice in an object, nothing that is not named here.`,
  content: { 'application/json': { schema } },
});

/** No literal type: the routes' types would take it for one JSON value. */
const BYTES: string = OCTETS;

export const octets = {
  required: true,
  description: `The bytes as they are: at most ${MAX_PIECE_BYTES / 1024} kB.`,
  content: { [BYTES]: { schema: z.string().meta({ format: 'binary', example: 'the bytes' }) } },
};

/** A file in an answer. */
export const file = (description: string, ...types: readonly string[]) => ({
  description,
  headers: z.object({ ETag: etag }),
  content: Object.fromEntries(
    types.map((type) => [type, { schema: z.string().meta({ format: 'binary', example: 'the bytes' }) }]),
  ),
});

export const IDEMPOTENCY_KEY = {
  'Idempotency-Key': z.string().optional().meta({
    description:
      'A text of your own, at most 255 characters. A repeat with the same key and body has one effect and gets the same answer.',
    example: '5d0f3c1e-fact-17',
  }),
};
export const IF_MATCH = {
  'If-Match': z.string().optional().meta({ description: 'The `ETag` of the version that was read.', example: '"3"' }),
};

export const VesselPath = z.object({ vesselId: Id });
export const ItemPath = z.object({ itemId: Id });
export const FindingPath = z.object({ findingId: Id });
export const EvidencePath = z.object({ evidenceId: Id });
export const UploadPath = z.object({ uploadId: Id });
export const VisitPath = z.object({ visitId: Id });
export const LimitationPath = z.object({ limitationId: Id });
export const ReferralPath = z.object({ referralId: Id });
export const CraftPath = z.object({ craft: CraftCode });
export const OverridePath = z.object({ overrideId: Id });
export const SavedViewPath = z.object({ viewId: Id });
export const RulePath = z.object({ ruleId: z.string().meta({ description: 'An `id` of `/v1/rules`.' }) });
export const RuleChangePath = z.object({ changeId: Id });
export const NoticePath = z.object({ noticeId: Id });
export const NoticeItemPath = z.object({ noticeId: Id, itemId: Id });
export const PersonPath = z.object({ personId: Id });
export const ShareLinkPath = z.object({ linkId: Id });
export const ApiKeyPath = z.object({ keyId: Id });
export const InvitationPath = z.object({ invitationId: Id });

type Declared = {
  description: string;
  headers?: z.ZodObject;
  content: { 'application/problem+json': { schema: typeof Problem; examples: Record<string, { value: Problem }> } };
};

export function problems<const T extends readonly ProblemType[]>(
  ...types: T
): { [K in T[number] as StatusOf<K>]: Declared } {
  const byStatus = Map.groupBy(types, (type) => PROBLEMS[type].status);
  const entries = [...byStatus].map(([status, all]) => [status, declared(all)]);
  return Object.fromEntries(entries) as { [K in T[number] as StatusOf<K>]: Declared };
}

function declared(types: readonly ProblemType[]): Declared {
  const description = types.map((type) => `${PROBLEMS[type].title} (\`/problems/${type}\`).`).join(' ');
  const examples = Object.fromEntries(types.map((type) => [type, { value: exampleOf(type) }]));
  const headers = types.map((type) => HEADERS[type]).find((each) => each !== undefined);
  return {
    description,
    ...(headers && { headers }),
    content: { 'application/problem+json': { schema: Problem, examples } },
  };
}

/** What a problem says in its headers besides. */
const HEADERS: Partial<Record<ProblemType, z.ZodObject>> = {
  unauthenticated: z.object({ 'WWW-Authenticate': z.string().meta({ example: 'Bearer realm="garboard"' }) }),
  stale: z.object({ ETag: etag }),
};

export function exampleOf(type: ProblemType): Problem {
  const { status, title } = PROBLEMS[type];
  const errors = [{ pointer: '/on', detail: 'is not on the calendar' }];
  const instance = '6f1f2a52-7c57-4c3e-9d1b-3a4d5c6e7f80';
  return { type: `/problems/${type}`, title, status, instance, ...(type === 'invalid' && { errors }) };
}

/** What a read that takes parameters can answer. */
export const READ_PROBLEMS = problems('unauthenticated', 'forbidden', 'invalid', 'fault');
/** What a read of one thing by its id can answer. */
export const READ_ONE_PROBLEMS = problems('unauthenticated', 'forbidden', 'not-found', 'fault');
/** What a question with a body can answer. */
export const BODY_PROBLEMS = problems(
  'malformed-json',
  'unauthenticated',
  'forbidden',
  'foreign-origin',
  'too-large',
  'unsupported-media-type',
  'invalid',
  'fault',
);
/** What every write can answer. A route adds what its own action can: `not-found`, `stale`, `conflict`. */
export const WRITE_PROBLEMS = {
  ...BODY_PROBLEMS,
  ...problems('forbidden', 'foreign-origin', 'invalid', 'idempotency-key-reused'),
};
/** What a person's own act without a body can answer. */
export const PERSON_PROBLEMS = problems('unauthenticated', 'forbidden', 'foreign-origin', 'fault');
