/** What a command is given and what it says. */

export type Options = {
  organisation?: string;
  role?: string;
  name?: string;
  email?: string;
  days?: string;
  'time-zone'?: string;
  kept?: string;
};

/** `usage`: the command was not understood. */
export type Answer = { readonly ok: boolean; readonly line: string; readonly usage?: boolean };

export const said = (line: string): Answer => ({ ok: true, line });
export const wrong = (line: string): Answer => ({ ok: false, line, usage: true });
