/** An organisation's own rule as the engine reads every rule: data of the same shape. */
import type { Day } from '../calendar/day.ts';
import { dayInWords } from '../calendar/words.ts';
import { limitInWords } from '../item/limit-words.ts';
import { resetInWords } from '../item/words.ts';
import type { OwnLimit, OwnRuleDefinition, OwnRuleGrounds, OwnRuleWeight } from './own-rule.ts';
import type { Duty, Limit, Rule } from './rule.ts';

/** Its only duty. */
const OWN_DUTY = 'duty';

export function ownRuleAsRule(
  id: string,
  definition: OwnRuleDefinition,
  { decidedBy, document, takesEffectOn }: OwnRuleGrounds & { readonly takesEffectOn: Day },
): Rule {
  const set = `set by ${decidedBy} from ${dayInWords(takesEffectOn)}`;
  return {
    id,
    scheme: 'own',
    weight: definition.weight,
    kinds: definition.kinds,
    inWords: definition.inWords,
    source: { publication: document, clause: null, address: null, status: 'second_hand' },
    duties: [dutyOf(definition, set)],
    checks: [],
  };
}

function dutyOf({ action, limits, first, window, resets, weight }: OwnRuleDefinition, set: string): Duty {
  const what = resetInWords(resets[0]);
  const duty: Duty = {
    id: OWN_DUTY,
    action,
    inWords: '',
    limits: limits.map(limitOf),
    ...(first && {
      fallback: [
        {
          kind: 'after',
          from: first.from,
          plus: { kind: 'fixed', period: first.plus },
          reading: `no ${what} is on record, so the first is counted from ${first.from === 'installed' ? 'fitting' : 'manufacture'}`,
        },
      ],
    }),
    ...(window && { window }),
    resets,
  };
  return { ...duty, inWords: `By ${WHOSE[weight]}, ${set}, ${limitsInWords(duty)}` };
}

function limitOf(limit: OwnLimit): Limit {
  switch (limit.kind) {
    case 'interval':
      return { kind: 'after', from: limit.from, plus: { kind: 'fixed', period: limit.plus } };
    case 'printed_expiry':
      return { kind: 'printed' };
    case 'running_hours':
      return limit;
    case 'before_event':
      return limit;
  }
}

function limitsInWords(duty: Duty): string {
  const [only, ...others] = duty.limits.map((limit) => limitInWords(limit, duty));
  const first = (duty.fallback ?? []).map((limit) => `, and for the first time ${limitInWords(limit, duty)}`).join('');
  const limits = others.length === 0 ? only : `the earliest of: ${[only, ...others].join('; ')}`;
  return `the limit is ${limits}${first}`;
}

const WHOSE: Record<OwnRuleWeight, string> = {
  own: 'the organisation’s own rule',
  insurer: 'the insurer’s terms',
  maker: 'the maker’s instructions',
  common_practice: 'common practice as the organisation keeps it',
};
