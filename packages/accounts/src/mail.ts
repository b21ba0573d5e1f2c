/** Letters go out through one small interface: the host decides whether to a mail server or to a page on the machine. */
export type Mail = { readonly to: string; readonly subject: string; readonly text: string };

/** Rejects when the letter could not be handed over. */
export type SendMail = (mail: Mail) => Promise<void>;
