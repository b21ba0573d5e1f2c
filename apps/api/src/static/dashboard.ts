/** The built dashboard. Its own addresses (`/vessels/…`) are all the one page. */
import type { Context } from 'hono';
import type { ApiEnv } from '../deps.ts';
import { contentType, openFolder, type StaticFolder } from './static-folder.ts';

/** Answers what no route answered; `null` when it is no address of the dashboard either. */
export type Dashboard = (c: Context<ApiEnv>) => Promise<Response | null>;

const OURS = /^\/(v1|docs|problems|auth|assets)(\/|$)|^\/(openapi[.]json|healthz|readyz|metrics)$|^\/sign-in\//;

export function dashboard(dir: string | null | undefined): Dashboard {
  if (!dir) return async () => null;
  const folder = openFolder(dir);
  return async (c) => {
    if (c.req.method !== 'GET' && c.req.method !== 'HEAD') return null;
    const name = c.req.path.slice(1);
    if (folder.has(name)) return serve(c, folder, name);
    const isPage = c.req.path === '/' || (!OURS.test(c.req.path) && wantsPage(c));
    return isPage && folder.has('index.html') ? serve(c, folder, 'index.html') : null;
  };
}

/** A program that mistypes an address gets its problem; a person gets the page, which says so in words. */
function wantsPage(c: Context<ApiEnv>): boolean {
  return (c.req.header('accept') ?? '').includes('text/html');
}

/** Vite writes a hash into the names under `assets/`: such a file never changes. */
async function serve(c: Context<ApiEnv>, folder: StaticFolder, name: string): Promise<Response> {
  const caching = /^assets\/.+-[\w-]{8}[.]\w+$/.test(name) ? 'public, max-age=31536000, immutable' : 'no-cache';
  return c.body(await folder.read(name), 200, { 'content-type': contentType(name), 'cache-control': caching });
}
