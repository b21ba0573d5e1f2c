/**
 * Thousands of requests made from the served document, seeded. Whatever is asked, the answer is one that the document
 * declares, to the last property, and never a fault of ours; what cannot fit its schema is refused.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type AnyRequest, anyRequest } from '../support/any-request.ts';
import { app, type Headed, signedInPerson, tell } from '../support/api.ts';
import { reportFigure, size } from '../support/long.ts';
import { type Asked, isForPersons, named, thingsOf, WITH_CREDENTIALS } from '../support/operations.ts';
import { aPerson } from '../support/people.ts';

const SEED = 20261125;
/** In full by the long run; here as many as a run of twenty minutes has room for. */
const REQUESTS = size(200, 2000);
/** New things after so many: what many writes leave behind would make the later ones slow. */
const ROUND = 50;
const AT_ONCE = 4;

/** Those that need something no guess can be: a secret from a letter, one's own address, another place of one's own. */
const NEVER = ['acceptInvitation', 'eraseAccount', 'endOneSession', 'switchOrganisation'];

/** What went wrong, and with which request; `null` when nothing did. */
async function tryOne(
  asked: Asked,
  credential: Headed,
  request: AnyRequest,
  seen: Set<number>,
): Promise<string | null> {
  const { path, headers, body, wrong } = request;
  const line = `${asked.method} ${path} ${JSON.stringify(headers)} ${body ?? ''}`;
  try {
    const { status } = await tell(app.request, asked.method, path, { ...credential, ...headers }, body);
    seen.add(status);
    if (status >= 500) return `${status}: ${line}`;
    return wrong.length > 0 && status < 400 ? `${status} although ${wrong.join('; ')}: ${line}` : null;
  } catch (fault) {
    return `${inWords(fault)}: ${line}`;
  }
}

/** What an answer was found to lack, rather than the whole answer. */
function inWords(fault: unknown): string {
  const { actual } = fault as { actual?: unknown };
  return Array.isArray(actual) ? actual.join('; ') : String(fault);
}

async function round(asked: Asked, seed: number, requests: number, seen: Set<number>): Promise<string[]> {
  const owner = await signedInPerson();
  // So that she can leave.
  await aPerson(owner.organisation);
  const credential = isForPersons(asked.operation)
    ? { cookie: owner.cookie, 'sec-fetch-site': 'same-origin' }
    : { authorization: `Bearer ${await owner.organisation.key()}` };
  const made = fc.sample(anyRequest(asked, await thingsOf(owner, undefined, asked)), { seed, numRuns: requests });
  const wrong: string[] = [];
  for (let first = 0; first < made.length; first += AT_ONCE) {
    const some = made.slice(first, first + AT_ONCE).map((request) => tryOne(asked, credential, request, seen));
    wrong.push(...(await Promise.all(some)).filter((words) => words !== null));
  }
  return wrong;
}

/** One half of the operations, so that two of these run side by side. */
export function holdToPromises(half: 0 | 1): void {
  const ours = WITH_CREDENTIALS.filter((_, index) => index % 2 === half);
  describe('whatever is asked', () => {
    it.each(named(ours))('the answer is one that was promised: %s', async (name, asked) => {
      const seen = new Set<number>();
      const wrong: string[] = [];
      for (let done = 0; done < REQUESTS; done += ROUND)
        wrong.push(...(await round(asked, SEED + done, Math.min(ROUND, REQUESTS - done), seen)));

      expect(wrong.slice(0, 5)).toEqual([]);
      const succeeded = [...seen].some((status) => status < 300);
      expect(succeeded, `no request succeeded: ${[...seen]}`).toBe(!NEVER.includes(name));
    });

    it('is told at the end of the run', () => {
      reportFigure('requests made from the document', `${ours.length} operations, ${REQUESTS} each`);
    });
  });
}
