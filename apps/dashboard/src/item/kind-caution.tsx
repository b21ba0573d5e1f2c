import { useQuery } from '@tanstack/react-query';
import { cautionFor } from '../strings/cautions.ts';
import { Caution } from '../ui/caution.tsx';
import { itemKindsQuery } from './catalogue.query.ts';

/** Shown wherever somebody reads about a thing before working on it. */
export function KindCaution({ kind }: { kind: string }) {
  const found = useQuery(itemKindsQuery()).data?.find((each) => each.id === kind);
  const caution = found && cautionFor(found);
  return caution ? <Caution>{caution}</Caution> : null;
}
