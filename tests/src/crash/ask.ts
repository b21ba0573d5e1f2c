/** One request to a program that may be killed at any moment: it answers, or it throws. */
export async function ask<Body>(
  address: string,
  key: string,
  [method, path]: readonly [string, string],
  body?: unknown,
  headers: Readonly<Record<string, string>> = {},
): Promise<Body> {
  const isBytes = body instanceof Uint8Array;
  const response = await fetch(address + path, {
    method,
    headers: {
      authorization: `Bearer ${key}`,
      ...(body !== undefined && { 'content-type': isBytes ? 'application/octet-stream' : 'application/json' }),
      ...headers,
    },
    ...(body !== undefined && { body: isBytes ? new Uint8Array(body) : JSON.stringify(body) }),
  });
  const answer = await response.json();
  if (!response.ok) throw new Error(`${response.status} ${JSON.stringify(answer)}`);
  return answer as Body;
}
