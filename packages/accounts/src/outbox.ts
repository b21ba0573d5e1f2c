/** Letters kept in memory and shown on a page, the latest first: for the demo, where there is no mail server. */
import type { Mail, SendMail } from './mail.ts';

export type Outbox = { readonly send: SendMail; letters(): readonly Mail[] };

const MOST_LETTERS = 50;

export function openOutbox(): Outbox {
  const letters: Mail[] = [];
  return {
    send: async (mail) => {
      letters.unshift(mail);
      letters.length = Math.min(letters.length, MOST_LETTERS);
    },
    letters: () => letters,
  };
}
