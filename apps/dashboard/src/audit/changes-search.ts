/** What the address of the changes may say. Anything else in it is left aside. */
import { text } from '../due-list/due-search.ts';
import { subjectWords } from '../strings/audit.ts';

export type ChangesSearch = {
  subject?: string | undefined;
  /** `kind:id`. */
  who?: string | undefined;
  vessel?: string | undefined;
  from?: string | undefined;
  to?: string | undefined;
};

const DAY = /^\d{4}-\d{2}-\d{2}$/;
const ACTOR = /^[a-z_]{1,20}:[0-9a-f-]{36}$/;
const ID = /^[0-9a-f-]{36}$/;

export function readChangesSearch(raw: Record<string, unknown>): ChangesSearch {
  const subject = text(raw.subject);
  const shaped = (value: unknown, shape: RegExp) => {
    const said = text(value);
    return said !== undefined && shape.test(said) ? said : undefined;
  };
  const read = {
    subject: subject !== undefined && Object.hasOwn(subjectWords, subject) ? subject : undefined,
    who: shaped(raw.who, ACTOR),
    vessel: shaped(raw.vessel, ID),
    from: shaped(raw.from, DAY),
    to: shaped(raw.to, DAY),
  };
  return Object.fromEntries(Object.entries(read).filter(([, value]) => value !== undefined));
}
