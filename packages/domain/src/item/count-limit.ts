/** One limit of a duty, and the day it leads to. */
import { addPeriod } from '../calendar/period.ts';
import { dayInWords, periodOf, recordedDateInWords } from '../calendar/words.ts';
import type { Limit } from '../rule/rule.ts';
import { ATTRIBUTES, dateOf } from './attribute.ts';
import { countAfter } from './count-after.ts';
import { countAnniversary, countGivenAnniversary, countOneOf } from './count-anniversary.ts';
import { countExpiry, countOnce } from './count-certificate.ts';
import { countBeforeEvent, countDeadline, countNextEvent, countTriggered } from './count-event.ts';
import { countRunningHours } from './count-running-hours.ts';
import { dateOnRecord } from './date-on-record.ts';
import type { Fact } from './fact.ts';
import { actsThatCount } from './last-done.ts';
import { type Grounds, type LimitCount, missingFact, notCounted } from './limit-count.ts';
import { isOfWhatWasRenewed } from './renewed-print.ts';
import { factInWords } from './words.ts';

/** `null`: nothing has happened that would make the limit count, so by it nothing is owed. */
export function countLimit(limit: Limit, grounds: Grounds): LimitCount | null {
  switch (limit.kind) {
    case 'after':
      return countAfter(limit, grounds);
    case 'printed':
      return countPrinted(limit, grounds);
    case 'given':
      return countGiven(limit, grounds);
    case 'next_event':
      return countNextEvent(limit, grounds);
    case 'certificate_expiry':
      return countExpiry(limit, grounds);
    case 'anniversary':
      return countAnniversary(limit, grounds);
    case 'one_of_anniversaries':
      return countOneOf(limit, grounds);
    case 'once_in_certificate':
      return countOnce(limit, grounds);
    case 'given_anniversary':
      return countGivenAnniversary(limit, grounds);
    case 'running_hours':
      return countRunningHours(limit, grounds);
    case 'before_event':
      return countBeforeEvent(limit, grounds);
    case 'triggered':
      return countTriggered(limit, grounds);
    case 'deadline_set':
      return countDeadline(limit, grounds);
  }
}

function countPrinted(limit: Extract<Limit, { kind: 'printed' }>, grounds: Grounds): LimitCount {
  const facts = printsThatCount(limit, grounds);
  const printed = dateOnRecord(facts, ['printed_expiry']);
  const missing = missingFact('printed_expiry', grounds);
  if (!printed) return notCounted(limit, grounds, missing);
  const { fact, doubts } = printed;
  const last = dayInWords(fact.on.last);
  return {
    ...notCounted(limit, grounds, missing),
    missing: [],
    on: fact.on.last,
    factIds: [fact.id],
    basis: factInWords(fact),
    assumed: fact.on.precision === 'day' ? [] : [`The date printed is ${fact.on.text}, read as its last day, ${last}.`],
    doubts,
  };
}

/** Without those of a part that has been renewed since; a mere service, or the fitting, renews no part. */
function printsThatCount(
  { renewedBy }: Extract<Limit, { kind: 'printed' }>,
  { facts, duty }: Grounds,
): readonly Fact[] {
  if (renewedBy === undefined) return facts;
  const renewal = actsThatCount(facts, duty.resets).findLast(({ test }) => test === renewedBy);
  return facts.filter((fact) => !renewal || !isOfWhatWasRenewed(fact, renewal));
}

function countGiven(limit: Extract<Limit, { kind: 'given' }>, grounds: Grounds): LimitCount {
  const { words, whereFound: place } = ATTRIBUTES[limit.attribute];
  const date = dateOf(grounds.attributes, limit.attribute);
  const none = notCounted(limit, grounds, { what: words, whereFound: place });
  if (!date) return none;
  const on = limit.plus ? addPeriod(date.first, periodOf(limit.plus)) : date.last;
  return { ...none, missing: [], on, basis: `On record: ${words}, ${recordedDateInWords(date)}` };
}
