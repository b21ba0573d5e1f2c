/** People's accounts, with letters by SMTP, on a page, or not at all. */
import { randomBytes } from 'node:crypto';
import type { SendMail } from '@garboard/accounts/mail.ts';
import { type Accounts, openAccounts } from '@garboard/accounts/open-accounts.ts';
import { USUAL_LIMITS } from '@garboard/accounts/options.ts';
import { type Outbox, openOutbox } from '@garboard/accounts/outbox.ts';
import { signingSecret } from '@garboard/db/organisation/registered-people.ts';
import type { Pools } from '@garboard/db/pool.ts';
import type { Config } from './config.ts';
import { mailBySmtp } from './mail.ts';

export type People = { readonly accounts: Accounts; readonly outbox?: Outbox };

/** `address`: asked when a letter is written, because the port is known only then. */
export async function openPeople(
  config: Config,
  pools: Pools,
  address: () => string,
  onFault: (fault: unknown) => void,
): Promise<People> {
  const outbox = showsLetters(config) ? openOutbox() : undefined;
  const sendMail: SendMail | null = config.mail
    ? mailBySmtp(config.mail.url, config.mail.from)
    : (outbox?.send ?? null);
  const publicUrl = () => config.publicUrl ?? nameOf(address());
  const secret = config.authSecret ?? (await signingSecret(pools.owner, randomBytes(48).toString('base64url')));
  const settings = {
    ...{ pool: pools.accounts, secret, publicUrl, sendMail, limits: USUAL_LIMITS },
    passkeyHost: config.publicUrl ? new URL(config.publicUrl).hostname : 'localhost',
    secureCookies: config.publicUrl?.startsWith('https:') ?? false,
  };
  const accounts = openAccounts(settings, onFault);
  return outbox && !config.mail ? { accounts, outbox } : { accounts };
}

/** Whoever reads the letters can become anybody: only for the demo, and only from this machine. */
const showsLetters = ({ demo, mail, host }: Config) =>
  demo && !mail && ['127.0.0.1', '::1', 'localhost'].includes(host);

/** Passkeys are bound to a name; a number will not do. */
export const nameOf = (address: string): string => address.replace('//127.0.0.1:', '//localhost:');
