/** People's accounts: signing up and in, letters, second factors, passkeys. What a person may do is not known here. */
import { betterAuth } from 'better-auth';
import { type AccountView, endOtherSessions, endSession, readAccount } from './account.ts';
import { invitationLetter } from './letters.ts';
import type { SendMail } from './mail.ts';
import { type AccountsSettings, ADDRESS_HEADER, optionsOf, SESSION_COOKIE } from './options.ts';
import { ACCOUNTS_PATH, isOpen, needsLetters } from './paths.ts';
import { refuseBadPassword } from './rules.ts';

export type Accounts = {
  readonly settings: AccountsSettings;
  /** The cookie that carries a session, and what it is signed with. */
  readonly cookie: { readonly name: string; readonly secret: string; readonly secure: boolean };
  /** `null`: nothing is there. The caller has refused writes from other origins. */
  handle(request: Request, address: string): Promise<Response | null>;
  /** The `Set-Cookie` of a new session, or `null` when there is no such person. */
  openSession(personId: string, organisationId: string): Promise<string | null>;
  read(personId: string): Promise<AccountView>;
  /** `false` when it is none of the person's, or over. */
  endSession(personId: string, sessionId: string): Promise<boolean>;
  endOtherSessions(personId: string, keptId: string): Promise<void>;
  readonly sendsMail: boolean;
  /** `path`: where the link leads, from the root. `false` when the letter could not be handed over. */
  sendInvitation(to: string, organisation: string, role: string, path: string): Promise<boolean>;
};

export function openAccounts(settings: AccountsSettings, onFault: (error: unknown) => void): Accounts {
  const deliver: SendMail = async (mail) => void settings.sendMail?.(mail).catch(onFault);
  const auth = betterAuth(optionsOf(settings, deliver, onFault));
  return {
    settings,
    cookie: {
      name: `${settings.secureCookies ? '__Secure-' : ''}${SESSION_COOKIE}`,
      secret: settings.secret,
      secure: settings.secureCookies,
    },
    handle: async (request, address) => {
      const path = new URL(request.url).pathname.slice(ACCOUNTS_PATH.length);
      if (!isOpen(request.method, path) || (needsLetters(path) && !settings.sendMail)) return null;
      const headers = new Headers(request.headers);
      headers.set(ADDRESS_HEADER, address);
      const known = new Request(request, { headers });
      return withoutSecret(path === '/set-password' ? await setPassword(known) : await auth.handler(known));
    },
    openSession: async (personId, organisationId) => {
      const { headers } = await auth.api.openSession({ body: { personId, organisationId }, returnHeaders: true });
      return headers.getSetCookie().find((cookie) => cookie.includes(`${SESSION_COOKIE}=`)) ?? null;
    },
    read: (personId) => readAccount(settings.pool, personId),
    endSession: (personId, sessionId) => endSession(settings.pool, personId, sessionId),
    endOtherSessions: (personId, keptId) => endOtherSessions(settings.pool, personId, keptId),
    sendsMail: settings.sendMail !== null,
    sendInvitation: async (to, organisation, role, path) => {
      try {
        await settings.sendMail?.(invitationLetter(to, organisation, role, `${settings.publicUrl()}${path}`));
        return settings.sendMail !== null;
      } catch (fault) {
        onFault(fault);
        return false;
      }
    },
  };

  /** For somebody who came by a link and has no password yet; the library keeps this door for servers. */
  async function setPassword(request: Request): Promise<Response> {
    const body: unknown = await request.json().catch(() => null);
    const newPassword = (body as { newPassword?: unknown } | null)?.newPassword;
    const text = typeof newPassword === 'string' ? newPassword : '';
    try {
      refuseBadPassword(text, []);
      return await auth.api.setPassword({ body: { newPassword: text }, headers: request.headers, asResponse: true });
    } catch (fault) {
      return refusalOf(fault);
    }
  }
}

function refusalOf(fault: unknown): Response {
  const { statusCode, body } = fault as { statusCode?: number; body?: object };
  if (statusCode === undefined || statusCode >= 500) throw fault;
  return Response.json(body ?? {}, { status: statusCode });
}

/** The session's secret stays in its cookie: no script needs to see it. */
async function withoutSecret(response: Response): Promise<Response> {
  if (!response.headers.get('content-type')?.includes('json')) return response;
  const body: unknown = await response
    .clone()
    .json()
    .catch(() => null);
  if (typeof body !== 'object' || body === null || !('token' in body || 'session' in body)) return response;
  const { token: none, session: neither, ...rest } = body as Record<string, unknown>;
  const headers = new Headers(response.headers);
  headers.delete('content-length');
  return new Response(JSON.stringify(rest), { status: response.status, headers });
}
