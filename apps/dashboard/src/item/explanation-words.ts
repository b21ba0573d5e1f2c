/** The parts of an explanation that the API sends as data, put into words. */
import { byWhomWords, factWords, testWords } from '../strings/codes.ts';
import { strings } from '../strings/item.ts';
import { formatDay, formatRecordedDate, readersToday } from '../ui/calendar.ts';
import { sentenceCase, withArticle } from '../ui/number-words.ts';
import type { Explanation, Fact } from './item.query.ts';

type Remedy = Explanation['wouldChangeIt'][number];

/** "A service recorded today by an approved liferaft service station moves it to 25 Nov 2027." */
export function remedyInWords({ act, test, by, ifDoneOn, movesTo }: Remedy): string {
  const what = test ? sentenceCase(withArticle(testWords[test])) : strings.act[act];
  const when = ifDoneOn === readersToday() ? strings.recordedToday : strings.doneOn(formatDay(ifDoneOn));
  const who = by.length === 0 ? '' : ` by ${orList(by.map((capacity) => byWhomWords[capacity]))}`;
  const where = movesTo
    ? strings.movesTo(formatDay(movesTo))
    : act === 'extended'
      ? strings.permittedDay
      : strings.newDate;
  return `${what}${when}${who}${where}`;
}

/** "serviced 22 Sep 2025". */
export function factInWords(fact: Fact): string {
  const what = fact.test ? testWords[fact.test] : factWords[fact.fact];
  return `${what} ${formatRecordedDate(fact.on)}`;
}

/** "12 months from the last service → 22 Sep 2026"; a limit that cannot be counted says so. */
export function limitInWords({ limit, on }: Explanation['alsoCounted'][number]): string {
  const what = sentenceCase(limit);
  return on ? `${what} → ${formatDay(on)}` : `${what}: ${strings.notOnRecord}`;
}

/** `a`, `a or b`, `a, b or c`. */
export function orList(parts: readonly string[]): string {
  if (parts.length < 2) return parts[0] ?? '';
  return `${parts.slice(0, -1).join(', ')} or ${parts[parts.length - 1]}`;
}
