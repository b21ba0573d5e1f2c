/**
 * Every place where a statement says which organisation is meant is taken out, one at a time, and the whole API
 * asked again: the policies alone must keep the two organisations apart.
 */
import { describe, expect, it } from 'vitest';
import { databaseUrl } from '../support/database.ts';
import { everythingOf } from '../support/everything-of.ts';
import { reportFigure } from '../support/long.ts';
import { type Asked, WITH_CREDENTIALS } from '../support/operations.ts';
import { countPredicates, shapeOf, withoutPredicate } from './predicates.ts';
import { rewritingPools } from './rewriting-pools.ts';
import { aFleet, marksOf, tryEverything } from './two-fleets.ts';

type Mutant = { readonly shape: string; readonly which: number; readonly asked: readonly Asked[] };

/** Which statements the API sends, with the operations that send them. */
async function allMutants(): Promise<Mutant[]> {
  const senders = new Map<string, Set<Asked>>();
  let sending: Asked | undefined;
  const listening = rewritingPools(databaseUrl, (text) => {
    const shape = shapeOf(text);
    if (sending && countPredicates(text) > 0) senders.set(shape, (senders.get(shape) ?? new Set()).add(sending));
    return text;
  });
  const [ours, theirs] = [await aFleet(), await aFleet()];
  for (const asked of WITH_CREDENTIALS) {
    sending = asked;
    await tryEverything(listening, [asked], ours, theirs);
  }
  await listening.close();
  return [...senders].flatMap(([shape, asked]) =>
    Array.from({ length: countPredicates(shape) }, (_, which) => ({ shape, which, asked: [...asked] })),
  );
}

const mutants = await allMutants();

describe('a statement that forgets whose the rows are', () => {
  it('is found in numbers: the test looks at something', () => {
    reportFigure('statements of the API that name the organisation, places', mutants.length);

    expect(mutants.length).toBeGreaterThan(15);
  });

  it('is not the same statement any more', () => {
    for (const { shape, which } of mutants) expect(withoutPredicate(shape, which)).not.toBe(shape);
  });

  it.each(mutants.map((mutant) => [`${mutant.shape.slice(0, 60)} … #${mutant.which}`, mutant] as const))(
    'shows and changes nothing of another organisation: %s',
    async (_, { shape, which, asked }) => {
      let sent = 0;
      const forgetting = rewritingPools(databaseUrl, (each) => {
        if (shapeOf(each) !== shape) return each;
        sent += 1;
        return withoutPredicate(each, which);
      });
      const [ours, theirs] = [await aFleet(), await aFleet()];
      const before = await everythingOf(theirs.organisation.id);

      const attempts = await tryEverything(forgetting, asked, ours, theirs).finally(() => forgetting.close());

      expect(sent, 'the statement was sent').toBeGreaterThan(0);
      for (const mark of marksOf(theirs))
        expect(attempts.filter((attempt) => attempt.text.includes(mark)).map(({ name }) => name)).toEqual([]);
      expect(attempts.filter(({ status }) => status >= 500)).toEqual([]);
      expect(await everythingOf(theirs.organisation.id)).toEqual(before);
    },
  );
});
