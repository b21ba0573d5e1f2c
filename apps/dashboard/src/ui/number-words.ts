/** Numbers as a sentence says them: words up to ninety-nine, figures above. */
const UNDER_TWENTY =
  'no one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  );
const TENS = ['', '', 'twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'];

/** `0` reads "no", as in "no things". */
export function numberInWords(count: number): string {
  if (count > 99) return count.toLocaleString('en-GB');
  if (count < 20) return UNDER_TWENTY[count] ?? String(count);
  const tens = TENS[Math.floor(count / 10)] ?? '';
  return count % 10 === 0 ? tens : `${tens}-${UNDER_TWENTY[count % 10]}`;
}

/** `one thing`, `nine things`. */
export function counted(count: number, one: string, many: string): string {
  return `${numberInWords(count)} ${count === 1 ? one : many}`;
}

/** `a test`, `an inspection`. */
export function withArticle(words: string): string {
  return `${/^[aeiou]/i.test(words) ? 'an' : 'a'} ${words}`;
}

/** For words that follow a colon. */
export function lowerFirst(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}

export function sentenceCase(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** `a`, `a and b`, `a, b and c`. */
export function inAList(parts: readonly string[]): string {
  if (parts.length < 2) return parts[0] ?? '';
  return `${parts.slice(0, -1).join(', ')} and ${parts[parts.length - 1]}`;
}
