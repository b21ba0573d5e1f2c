/** A browser at the doors under /auth, without the screens. */
import { app } from './api.ts';
import { anAddress, letterTo } from './people.ts';

export const PASSWORD = 'seven seas and a gull';
export const OURS = { 'sec-fetch-site': 'same-origin', origin: 'http://localhost' };
type Cookies = Map<string, string>;
export type Answer<Body> = {
  readonly status: number;
  readonly body: Body;
  readonly headers: Headers;
  readonly text: string;
};

/** A browser that keeps its cookies. */
export function aBrowser(at: { request: typeof app.request } = app) {
  const cookies: Cookies = new Map();
  async function ask<Body = Record<string, unknown>>(
    method: string,
    path: string,
    body?: unknown,
    headers: Record<string, string> = OURS,
  ): Promise<Answer<Body>> {
    const cookie = [...cookies].map(([name, value]) => `${name}=${value}`).join('; ');
    const response = await at.request(path, {
      method,
      headers: {
        ...headers,
        ...(cookie && { cookie }),
        ...(body !== undefined && { 'content-type': 'application/json' }),
      },
      ...(body !== undefined && { body: JSON.stringify(body) }),
    });
    keep(cookies, response.headers);
    const text = await response.text();
    const isJson = response.headers.get('content-type')?.includes('json');
    return { status: response.status, headers: response.headers, text, body: isJson ? JSON.parse(text) : undefined };
  }
  return {
    cookies,
    get: <Body>(path: string) => ask<Body>('GET', path),
    post: (path: string, body: unknown = {}, headers = OURS) => ask('POST', path, body, headers),
  };
}

function keep(cookies: Cookies, headers: Headers): void {
  for (const line of headers.getSetCookie()) {
    const [pair = '', ...attributes] = line.split('; ');
    const at = pair.indexOf('=');
    const isOver = attributes.some((attribute) => attribute.toLowerCase() === 'max-age=0');
    if (isOver) cookies.delete(pair.slice(0, at));
    else cookies.set(pair.slice(0, at), pair.slice(at + 1));
  }
}

export async function signedUp(email = anAddress(), browser = aBrowser()) {
  await browser.post('/auth/sign-up/email', { email, name: 'Ines Falk', password: PASSWORD });
  const token = letterTo(email).path.replace('/verify/', '');
  const verified = await browser.get(`/auth/verify-email?token=${token}`);
  return { email, browser, verified };
}

export const signIn = (browser: ReturnType<typeof aBrowser>, email: string, password = PASSWORD) =>
  browser.post('/auth/sign-in/email', { email, password });
