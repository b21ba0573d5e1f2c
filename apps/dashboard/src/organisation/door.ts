/** The doors under /auth: their answers are the accounts' library's own, told by code. */

import { doorFaults } from '../strings/doors.ts';
import type { FormFault } from '../ui/quick-form.tsx';

export type Answered =
  | { readonly ok: true; readonly body: Readonly<Record<string, unknown>> }
  | { readonly ok: false; readonly code: string };

/** Without a body it is a question; what is not answered at all has the code `silence`. */
export async function knock(path: string, body?: object): Promise<Answered> {
  try {
    const response = await fetch(`/auth${path}`, {
      ...(body && { method: 'POST', body: JSON.stringify(body), headers: { 'content-type': 'application/json' } }),
    });
    const told: unknown = await response.json().catch(() => ({}));
    const fields = typeof told === 'object' && told !== null ? (told as Record<string, unknown>) : {};
    if (response.ok) return { ok: true, body: fields };
    return { ok: false, code: typeof fields['code'] === 'string' ? fields['code'] : String(response.status) };
  } catch {
    return { ok: false, code: 'silence' };
  }
}

/** What went wrong, at its box; `boxes` renames where a form calls the same thing otherwise. */
export function faultOf(code: string, boxes: Readonly<Record<string, string>> = {}): FormFault {
  const { at, words } = doorFaults[code] ?? doorFaults['other'] ?? { words: code };
  return at === undefined ? { words } : { at: boxes[at] ?? at, words };
}
