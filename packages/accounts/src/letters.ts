/** The words of every letter. Plain text; each says what to do where it was not asked for. */
import type { Mail } from './mail.ts';

type Person = { readonly email: string; readonly name: string };

const letter = (to: Person, subject: string, paragraphs: readonly string[]): Mail => ({
  to: to.email,
  subject,
  text: [...(to.name ? [`${to.name},`] : []), ...paragraphs].join('\n\n'),
});

const IGNORE = 'If you did not ask for this, leave it: nothing happens without the link.';

export const verifyAddressLetter = (to: Person, link: string): Mail =>
  letter(to, 'Is this your address?', ['Open this link to finish signing up. It works for one hour:', link, IGNORE]);

export const alreadySignedUpLetter = (to: Person, signIn: string): Mail =>
  letter(to, 'You have an account already', [
    'Somebody, perhaps you, signed up with this address. There is an account for it already. Sign in here:',
    signIn,
    'The password can be set anew from there. If it was not you, leave it: nothing was changed.',
  ]);

export const newPasswordLetter = (to: Person, link: string): Mail =>
  letter(to, 'Set a new password', ['Open this link to set a new password. It works for one hour:', link, IGNORE]);

export const invitationLetter = (to: string, organisation: string, role: string, link: string): Mail =>
  letter({ email: to, name: '' }, `${organisation} invites you`, [
    `You are invited to work with the fleet of ${organisation} as ${role}. Open this link within seven days:`,
    link,
    'It is for this address alone. If you do not know the organisation, leave it.',
  ]);
