/** What of the library is open to browsers. Everything else it could do is not there. */
export const ACCOUNTS_PATH = '/auth';

const OPEN: ReadonlySet<string> = new Set([
  'POST /sign-up/email',
  'POST /sign-in/email',
  'POST /send-verification-email',
  'GET /verify-email',
  'POST /request-password-reset',
  'POST /reset-password',
  'POST /change-password',
  'POST /set-password',
  'POST /two-factor/enable',
  'POST /two-factor/verify-totp',
  'POST /two-factor/verify-backup-code',
  'POST /two-factor/generate-backup-codes',
  'POST /two-factor/disable',
  'GET /passkey/generate-register-options',
  'POST /passkey/verify-registration',
  'GET /passkey/generate-authenticate-options',
  'POST /passkey/verify-authentication',
  'POST /passkey/delete-passkey',
]);
/** These send a letter; a server that sends none does not offer them. */
const BY_LETTER: ReadonlySet<string> = new Set([
  '/sign-up/email',
  '/send-verification-email',
  '/request-password-reset',
]);

export const isOpen = (method: string, path: string): boolean => OPEN.has(`${method} ${path}`);
export const needsLetters = (path: string): boolean => BY_LETTER.has(path);
