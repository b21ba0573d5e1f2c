const PREFIX = 'notice:';

/** The safety notice that asks it; `null` where a rule does. */
export function noticeOf(ruleId: string): string | null {
  return ruleId.startsWith(PREFIX) ? ruleId.slice(PREFIX.length) : null;
}
