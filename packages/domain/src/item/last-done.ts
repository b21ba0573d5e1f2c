/** Which act resets a duty's clock: it passed, and it was done by somebody with the competence asked for. */
import type { Reset } from '../rule/rule.ts';
import type { Fact } from './fact.ts';
import type { FactSetAside } from './unit-aboard.ts';
import { actInWords, capacitiesInWords, testsInWords } from './words.ts';

export type LastDone = {
  readonly fact: Fact | null;
  readonly assumed: readonly string[];
  /** Later acts that did not count, and why. */
  readonly setAside: readonly FactSetAside[];
};

/** The last act that counts among `facts`, which are in order of day. */
export function lastDone(facts: readonly Fact[], resets: readonly Reset[]): LastDone {
  const setAside: FactSetAside[] = [];
  for (const fact of facts.toReversed()) {
    const judgement = judge(fact, resets);
    if (judgement.kind === 'counts') return { fact, assumed: judgement.assumed, setAside: setAside.reverse() };
    if (judgement.kind === 'set_aside') setAside.push({ fact, why: judgement.why });
  }
  return { fact: null, assumed: [], setAside: setAside.reverse() };
}

/** Every act that counts, in order of day; a certificate's history is made of them. */
export function actsThatCount(facts: readonly Fact[], resets: readonly Reset[]): readonly Fact[] {
  return facts.filter((fact) => judge(fact, resets).kind === 'counts');
}

/** The acts since `last` that were done with the competence asked for and did not pass, in order of day. */
export function failedSince(facts: readonly Fact[], resets: readonly Reset[], last: Fact | null): readonly Fact[] {
  const since = last === null ? 0 : facts.indexOf(last) + 1;
  return facts.slice(since).filter((fact) => {
    const meant = resets.filter((reset) => isMeant(fact, reset));
    return fact.outcome !== 'passed' && meant.length > 0 && judgeCompetence(fact, meant).kind === 'counts';
  });
}

type Judgement =
  | { readonly kind: 'counts'; readonly assumed: readonly string[] }
  | { readonly kind: 'set_aside'; readonly why: string }
  | { readonly kind: 'beside_the_point' };

function judge(fact: Fact, resets: readonly Reset[]): Judgement {
  const meant = resets.filter((reset) => isMeant(fact, reset));
  if (meant.length === 0) return besideThePoint(fact, resets);
  switch (fact.outcome) {
    case 'failed':
      return { kind: 'set_aside', why: 'It did not pass, so it resets nothing.' };
    case 'partly':
      return { kind: 'set_aside', why: 'It was only partly done, so it resets nothing.' };
    case 'passed':
      return judgeCompetence(fact, meant);
  }
}

function isMeant(fact: Fact, reset: Reset): boolean {
  return fact.fact === reset.act && (!reset.tests || (fact.test !== undefined && reset.tests.includes(fact.test)));
}

function judgeCompetence(fact: Fact, meant: readonly Reset[]): Judgement {
  const by = [...new Set(meant.flatMap((reset) => reset.by))];
  const capacity = fact.doneBy?.capacity;
  if (meant.some((reset) => reset.by.length === 0)) return { kind: 'counts', assumed: [] };
  if (capacity === undefined) return { kind: 'counts', assumed: [notSaid(fact, by)] };
  if (by.includes(capacity)) return { kind: 'counts', assumed: [] };
  return {
    kind: 'set_aside',
    why: `It was done by ${capacitiesInWords([capacity])}; what counts is ${capacitiesInWords(by)}.`,
  };
}

function notSaid(fact: Fact, by: Reset['by']): string {
  return `It is not recorded who did the ${actInWords(fact.fact, fact.test)}; taken to be ${capacitiesInWords(by)}.`;
}

function besideThePoint(fact: Fact, resets: readonly Reset[]): Judgement {
  if (isMereLook(fact, resets)) return { kind: 'set_aside', why: 'A look resets no service.' };
  const unsaid =
    fact.test === undefined && fact.outcome === 'passed' && resets.some((reset) => reset.act === fact.fact);
  return unsaid ? { kind: 'set_aside', why: notSaidWhat(resets, fact) } : { kind: 'beside_the_point' };
}

/** Only where every reset of that act names what must be done: otherwise it would have been meant. */
function notSaidWhat(resets: readonly Reset[], { fact }: Fact): string {
  const tests = resets.filter((reset) => reset.act === fact).flatMap((reset) => reset.tests ?? []);
  return `It does not say what was done; what counts is ${testsInWords(tests)}.`;
}

function isMereLook(fact: Fact, resets: readonly Reset[]): boolean {
  return fact.fact === 'inspected' && resets.some((reset) => reset.act === 'serviced' || reset.act === 'overhauled');
}
