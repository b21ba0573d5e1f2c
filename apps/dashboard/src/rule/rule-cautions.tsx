import type { ItemKind } from '../item/catalogue.query.ts';
import { cautionFor } from '../strings/cautions.ts';
import { Caution } from '../ui/caution.tsx';
import type { Rule } from './worked-example.ts';

/** What must be heeded with any of its things, each once: read before what there is to do. */
export function RuleCautions({ rule, kinds }: { rule: Rule; kinds: readonly ItemKind[] }) {
  const its = kinds.filter(({ id }) => rule.kinds.includes(id));
  const cautions = new Set(its.flatMap((kind) => cautionFor(kind) ?? []));
  return [...cautions].map((caution) => <Caution key={caution}>{caution}</Caution>);
}
