/** A secret's text beside what it opens: for the first who asks alone, since it is stored nowhere. */
import { done, type FailureKind, type Result } from './result.ts';

/** `text` is `null` for a repeated request. */
export function toldOnce<T, V, K extends FailureKind>(
  result: Result<T, K>,
  text: string,
  tell: (value: T, text: string | null) => V,
): Result<V, K> {
  if (!result.ok) return result;
  const { value, replayed } = result;
  return { ...done(tell(value, replayed ? null : text)), ...(replayed && { replayed }) };
}
