/** A rule that an organisation makes for itself, in versions. */
import * as z from 'zod';
import { CAPACITY_CODES, TEST_CODES } from '../item/fact.ts';
import { ItemKindCode } from '../item/item.ts';
import { CalendarDay, Duration, Id, Instant, words } from '../shared.ts';
import { EVENT_CODES } from '../vessel/situation.ts';
import { SchemeCode } from '../vessel/vessel.ts';

/** What a rule can ask; the others are a safety notice's. */
const ACTION_CODES = ['service', 'inspect', 'test', 'replace', 'withdraw', 'overhaul'] as const;

const OwnLimit = z
  .discriminatedUnion(
    'kind',
    [
      z.strictObject({
        kind: z.literal('interval'),
        from: z.enum(['manufactured', 'installed', 'last_done']),
        plus: Duration,
      }),
      z.strictObject({ kind: z.literal('printed_expiry') }),
      z.strictObject({ kind: z.literal('running_hours'), hours: z.int().min(1).max(100_000) }),
      z.strictObject({ kind: z.literal('before_event'), event: z.enum(EVENT_CODES), within: Duration }),
    ],
    'must be one of interval, printed_expiry, running_hours, before_event',
  )
  .meta({
    id: 'OwnLimit',
    description:
      'What leads to the date; of several the earliest binds. `before_event`: done no longer than `within` before its start.',
  });

const OwnRuleVessels = z
  .discriminatedUnion(
    'which',
    [
      z.strictObject({ which: z.literal('all') }),
      z.strictObject({ which: z.literal('under_scheme'), scheme: SchemeCode }),
      z.strictObject({ which: z.literal('chosen'), vesselIds: z.array(Id).min(1).max(500) }),
    ],
    'must be one of all, under_scheme, chosen',
  )
  .meta({ id: 'OwnRuleVessels' });

const OwnReset = z
  .strictObject({
    act: z.enum(['inspected', 'serviced', 'tested', 'replaced', 'overhauled']),
    tests: z.array(z.enum(TEST_CODES)).min(1).max(10).optional(),
    by: z.array(z.enum(CAPACITY_CODES)).max(CAPACITY_CODES.length),
  })
  .meta({
    id: 'OwnReset',
    description: 'An act that starts the clock anew. Without `tests`: whichever; `by` empty: anybody.',
  });

/** What a version lays down. */
const text = {
  kinds: z.array(ItemKindCode).min(1).max(100).meta({ description: 'The things that it bears on.' }),
  vessels: OwnRuleVessels,
  action: z.strictObject({ kind: z.enum(ACTION_CODES), words: words(160) }).meta({
    id: 'OwnAction',
    description: 'What somebody must do; `words` as an instruction.',
  }),
  inWords: words(600).meta({ description: 'The whole rule, in full sentences.' }),
  limits: z.array(OwnLimit).min(1).max(8),
  first: z
    .strictObject({ from: z.enum(['manufactured', 'installed']), plus: Duration })
    .optional()
    .meta({ description: 'Counted while it was never done, where the limits alone give no day.' }),
  window: z
    .strictObject({ before: Duration, after: Duration })
    .optional()
    .meta({ description: 'The span around the due date in which the work counts as done on it.' }),
  resets: z.array(OwnReset).max(8),
  weight: z.enum(['own', 'insurer', 'maker', 'common_practice']).meta({ description: 'What stands behind it.' }),
};

const grounds = {
  takesEffectOn: CalendarDay.meta({ description: 'The first day on which this counts; it may lie in the future.' }),
  decidedBy: words(120).meta({ description: 'Who decided it.', example: 'Anna Berg' }),
  reason: words(500),
  document: words(300).meta({ description: 'Where it stands in writing.', example: 'Standing orders, no. 4' }),
};

const GROUNDS_EXAMPLE = {
  takesEffectOn: '2026-03-01',
  decidedBy: 'Anna Berg',
  reason: 'Two were found empty at the end of last season.',
  document: 'Standing orders, no. 4',
};
const TEXT_EXAMPLE = {
  kinds: ['portable_extinguisher_dry_powder', 'portable_extinguisher_foam'],
  vessels: { which: 'all' as const },
  action: { kind: 'inspect' as const, words: 'Look at pin, gauge and bracket' },
  inWords: 'Every extinguisher is looked at once a week.',
  limits: [{ kind: 'interval' as const, from: 'last_done' as const, plus: 'P7D' }],
  resets: [{ act: 'inspected' as const, by: [] }],
  weight: 'own' as const,
};

/** Also the whole text of a further version. */
export const NewOwnRule = z
  .strictObject({ ...text, ...grounds })
  .meta({ id: 'NewOwnRule', example: { ...TEXT_EXAMPLE, ...GROUNDS_EXAMPLE } });
export type NewOwnRule = z.infer<typeof NewOwnRule>;

export const NewOwnRuleEnding = z.strictObject(grounds).meta({
  id: 'NewOwnRuleEnding',
  description: '`takesEffectOn`: the first day on which there is no such rule.',
  example: { ...GROUNDS_EXAMPLE, takesEffectOn: '2027-01-01', reason: 'Gauges that report by themselves were fitted.' },
});
export type NewOwnRuleEnding = z.infer<typeof NewOwnRuleEnding>;

const OwnRuleText = z
  .strictObject(text)
  .meta({ id: 'OwnRuleText', description: 'What a version lays down; a version without it ends the rule.' });
export type OwnRuleText = z.infer<typeof OwnRuleText>;

const OwnRuleVersion = z
  .object({
    number: z.int().meta({ description: 'From 1, in the order in which they were laid down.' }),
    ...grounds,
    laysDown: OwnRuleText.optional(),
    recordedAt: Instant,
    recordedBy: z.string().meta({ description: 'The credential that laid it down.' }),
    changeId: Id.optional().meta({
      description: 'An entry of `/v1/rule-changes`. Absent until its day has come and it was taken up.',
    }),
  })
  .meta({ id: 'OwnRuleVersion' });
export type OwnRuleVersion = z.infer<typeof OwnRuleVersion>;

export const OwnRule = z
  .object({
    version: z.int().meta({ description: 'The rule’s `ETag`: another with each version laid down or taken up.' }),
    inForce: z
      .int()
      .optional()
      .meta({ description: 'The number of the version that counts now. Absent: none yet, or it has ended.' }),
    versions: z.array(OwnRuleVersion),
  })
  .meta({
    id: 'OwnRule',
    description:
      'Of a day, what was laid down last among the versions that had taken effect by then counts: a version also stands in for what was planned before for a later day.',
  });
export type OwnRule = z.infer<typeof OwnRule>;

export const RuleChange = z
  .object({
    id: Id,
    ruleId: Id,
    number: z.int().meta({ description: 'The number of the version that makes the change.' }),
    state: z.enum(['running', 'done']),
    itemsTotal: z.int().meta({ description: 'The things it can touch, counted when it began.' }),
    itemsDone: z.int(),
    obligationsChanged: z.int(),
    begunAt: Instant,
    finishedAt: Instant.optional(),
  })
  .meta({
    id: 'RuleChange',
    example: {
      id: '0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1d',
      ruleId: '0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a',
      number: 2,
      state: 'running',
      itemsTotal: 164,
      itemsDone: 80,
      obligationsChanged: 80,
      begunAt: '2026-11-25T08:12:00Z',
    },
  });
export type RuleChange = z.infer<typeof RuleChange>;
