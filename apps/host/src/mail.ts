/** Letters by SMTP. Where the server is stands in `MAIL_URL`; whom they come from in `MAIL_FROM`. */
import type { SendMail } from '@garboard/accounts/mail.ts';
import { createTransport } from 'nodemailer';

export function mailBySmtp(url: string, from: string): SendMail {
  const transport = createTransport(url);
  return async ({ to, subject, text }) => void (await transport.sendMail({ from, to, subject, text }));
}
