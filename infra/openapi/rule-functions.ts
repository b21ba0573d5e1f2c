/** The rules that need more than a pattern. Each answers with what is wrong in words; nothing when all is well. */
type Node = { readonly [key: string]: unknown };
type Said = { readonly message: string }[];
type Parameter = { readonly name: string; readonly in: string };
type Operation = {
  readonly operationId: string;
  /** A question that needs a body. That it writes nothing is tested on the running program. */
  readonly 'x-reads-only'?: true;
  /** The body carries what is the credential elsewhere. */
  readonly 'x-secret-in-body'?: true;
  readonly security?: readonly unknown[];
  readonly parameters?: readonly Parameter[];
  readonly requestBody?: unknown;
  readonly responses: Readonly<
    Record<string, { readonly content?: Readonly<Record<string, Node>>; readonly headers?: Node }>
  >;
};

const say = (...messages: (string | false)[]): Said =>
  messages.flatMap((message) => (message === false ? [] : [{ message }]));
const takes = ({ parameters = [] }: Operation, name: string) => parameters.some((each) => each.name === name);
const misses = ({ responses }: Operation, ...statuses: string[]) =>
  statuses.filter((status) => !(status in responses)).map((status) => `must declare ${status}`);

/** `application/problem+json` and nothing else, with an example for each type. */
export function refusesWell({ responses }: Operation): Said {
  return Object.entries(responses)
    .filter(([status]) => status >= '400')
    .flatMap(([status, { content = {} }]) => {
      const { 'application/problem+json': problem, ...others } = content;
      return say(
        problem === undefined && `${status} must be application/problem+json`,
        Object.keys(others).length > 0 && `${status} must be nothing but application/problem+json`,
        problem !== undefined && !problem.examples && `${status} must show an example`,
      );
    });
}

export function guarded(operation: Operation): Said {
  if (operation['x-reads-only'] || operation['x-secret-in-body']) return [];
  return say(
    (operation.security ?? []).length === 0 && 'must ask for a credential',
    ...misses(operation, '401', '403'),
  );
}

export function repeatable(operation: Operation): Said {
  return say(
    operation.requestBody !== undefined && !takes(operation, 'Idempotency-Key') && 'must take Idempotency-Key',
  );
}

export function versionAsked(operation: Operation): Said {
  return say(!takes(operation, 'If-Match') && 'must take If-Match', ...misses(operation, '412', '428'));
}

/** A list that is always whole has `nextCursor: null` and no pages. */
export function tellsPages(operation: Operation): Said {
  const { schema, headers } = { schema: jsonOf(operation), headers: operation.responses[200]?.headers ?? {} };
  const cursor = ((schema.properties ?? {}) as Record<string, Node>).nextCursor;
  const isPaged = cursor !== undefined && [cursor.type].flat().includes('string');
  const isList = isPaged && 'items' in (schema.properties as Node);
  return say(
    isList && !takes(operation, 'limit') && 'must take limit',
    isList && !takes(operation, 'cursor') && 'must take cursor',
    isList && !('Link' in headers) && 'must tell Link',
    isList && !operation.operationId.startsWith('list') && 'must be called list…',
    !isPaged && takes(operation, 'cursor') && 'takes a cursor and answers with none',
  );
}

const jsonOf = ({ responses }: Operation) => (responses[200]?.content?.['application/json']?.schema ?? {}) as Node;

/** At every depth of what is asked for. */
export function unlisted(schema: Node, place = ''): Said {
  if (typeof schema !== 'object' || schema === null) return [];
  const inner = Object.entries(schema).flatMap(([key, value]) => unlisted(value as Node, `${place}/${key}`));
  const open = schema.type === 'object' && schema.properties !== undefined && schema.additionalProperties !== false;
  return [...say(open && `${place || '/'} takes any property`), ...inner];
}
