/** Checks have no date of their own: they put a doubt on the dates that rest on what they check. */
import { endOfMonth } from '../calendar/day.ts';
import { addPeriod } from '../calendar/period.ts';
import { monthInWords, periodOf } from '../calendar/words.ts';
import type { Check, Rule } from '../rule/rule.ts';
import { dateOnRecord } from './date-on-record.ts';
import type { Fact } from './fact.ts';

/** What the rule's checks say of the facts: nothing when they hold. */
export function doubtsOfChecks(rule: Rule, facts: readonly Fact[]): readonly string[] {
  return rule.checks.flatMap((check) => doubtOf(check, rule, facts) ?? []);
}

function doubtOf(check: Check, rule: Rule, facts: readonly Fact[]): string | null {
  switch (check.kind) {
    case 'stamp_not_after':
      return doubtOfStamp(check, rule, facts);
    case 'no_date':
      return null;
  }
}

/** Whole months: the stamp is a month, and so is the mark of manufacture. */
function doubtOfStamp(
  check: Extract<Check, { kind: 'stamp_not_after' }>,
  rule: Rule,
  facts: readonly Fact[],
): string | null {
  const made = dateOnRecord(facts, [check.from])?.fact;
  if (!made) return null;
  const latest = endOfMonth(addPeriod(made.on.first, periodOf(check.plus)));
  const printed = dateOnRecord(facts, ['printed_expiry'])?.fact;
  if (printed && printed.on.last <= latest) return null;
  const found = printed ? `It is stamped ${printed.on.text}` : 'No stamp is on record';
  const clause = `${rule.source.publication} ${rule.source.clause}`;
  return `${found}; the latest stamp allowed is ${monthInWords(latest)}, as ${check.inWords} (${clause}).`;
}
