/** The catalogue: rules with their sources, item kinds, schemes. */
import * as z from 'zod';
import { CAPACITY_CODES, FACT_CODES, TEST_CODES } from '../item/fact.ts';
import { ItemKindCode } from '../item/item.ts';
import { Action, SOURCE_EXAMPLE, Source, WeightCode } from '../item/obligation.ts';
import { pageOf } from '../shared.ts';
import { EVENT_CODES, SITUATION_PARTS } from '../vessel/situation.ts';
import { SchemeCode } from '../vessel/vessel.ts';
import { OwnRule } from './own-rule.ts';

/** A value that a rule asks for and no fact holds. */
export const Attribute = z
  .object({
    name: z.string().meta({ description: 'The key under `attributes`.', example: 'seasonMonths' }),
    type: z.enum(['string', 'number', 'boolean']),
    is: z
      .enum(['months', 'hours', 'yes_no', 'date', 'choice'])
      .meta({ description: '`months` and `hours` are whole numbers above nought; `date` a day, a month or a year.' }),
    choices: z.array(z.object({ value: z.string(), words: z.string() })).optional(),
    words: z.string(),
    whereFound: z.string(),
  })
  .meta({ id: 'Attribute' });
export type Attribute = z.infer<typeof Attribute>;

const Meaning = z
  .object({
    of: z.enum(['fact', 'test', 'event', 'situation', 'capacity']),
    code: z.string(),
    words: z.string(),
  })
  .meta({ id: 'Meaning' });

const Reads = z
  .object({
    facts: z.array(z.enum(FACT_CODES)),
    tests: z.array(z.enum(TEST_CODES)),
    attributes: z.array(Attribute),
    events: z.array(z.enum(EVENT_CODES)),
    situations: z.array(z.enum(SITUATION_PARTS)),
    meanings: z
      .array(Meaning)
      .meta({ description: 'What each code means that is named above or in `resets`, and what is stated with it.' }),
  })
  .meta({
    id: 'RuleReads',
    description: 'What the rule reads, so that a request to explain can be written from this page.',
  });

const Reset = z
  .object({
    act: z.enum(FACT_CODES),
    tests: z.array(z.enum(TEST_CODES)).optional(),
    by: z.array(z.enum(CAPACITY_CODES)),
  })
  .meta({
    id: 'Reset',
    description:
      'An act that starts the clock anew, when its outcome is `passed`. Without `tests`: whichever; with them, the fact’s `test` must be one of them; `by` empty: anybody.',
  });

const Duty = z
  .object({
    id: z.string(),
    action: Action,
    inWords: z.string(),
    onlyFor: z.array(ItemKindCode).optional(),
    details: z.array(z.string()).meta({
      description:
        'How its date comes about, in sentences: the limits that compete, what counts where one gives no day, windows, extensions, conditions.',
    }),
    resets: z.array(Reset),
  })
  .meta({ id: 'Duty' });

export const Rule = z
  .object({
    id: z.string(),
    scheme: SchemeCode,
    weight: WeightCode,
    kinds: z.array(ItemKindCode),
    inWords: z.string(),
    source: Source,
    duties: z.array(Duty),
    checks: z
      .array(z.object({ inWords: z.string() }))
      .meta({ description: 'No date of their own: they put a doubt on what is recorded.' }),
    alsoAsks: z.array(z.string()).meta({ description: 'What the clause asks besides, and is not worked out here.' }),
    appliesWhen: z.array(z.string()).meta({ description: 'Conditions for the whole rule; none: it always applies.' }),
    whileNotRecorded: z
      .array(z.string())
      .meta({ description: 'What is assumed or left unknown while something is not on record, or only roughly.' }),
    reads: Reads,
    own: z.boolean().meta({ description: 'Made by your organisation.' }),
    ownRule: OwnRule.optional(),
  })
  .meta({
    id: 'Rule',
    example: {
      id: 'raft-solas',
      scheme: 'solas',
      weight: 'law',
      kinds: ['liferaft'],
      inWords: 'An inflatable liferaft is serviced at intervals of not more than 12 months, at an approved station.',
      source: SOURCE_EXAMPLE,
      duties: [
        {
          id: 'service',
          action: { kind: 'service', words: 'Have the liferaft serviced at an approved station' },
          inWords: 'An inflatable liferaft is serviced at intervals of not more than 12 months',
          details: [
            'Due: 12 months after the last service.',
            'An authority may extend it to 17 months: counts only when that is on record.',
          ],
          resets: [{ act: 'serviced', by: ['liferaft_service_station'] }],
        },
      ],
      checks: [],
      alsoAsks: [],
      appliesWhen: [
        'Applies where raft type-approved for extended service intervals: no; while that is not on record, it is taken to apply.',
      ],
      whileNotRecorded: [
        'A date known only to the month or year counts from its first day, and that is told.',
        'A permission to be late counts only while it is on record as an extension, with the last day that it covers; without one, only how far it could go is told.',
      ],
      reads: {
        facts: ['extended', 'serviced'],
        tests: [],
        attributes: [],
        events: [],
        situations: [],
        meanings: [{ of: 'capacity', code: 'liferaft_service_station', words: 'a liferaft service station' }],
      },
      own: false,
    },
  });
export type Rule = z.infer<typeof Rule>;
export const RulePage = pageOf(Rule, 'RulePage');
export type RulePage = z.infer<typeof RulePage>;

const ITEM_CLASS_CODES = [
  'rigging',
  'hoses',
  'flares',
  'liferaft',
  'extinguishers',
  'seacocks',
  'gas',
  'lifejackets',
  'beacons',
  'hydrostatic_release',
  'engine',
  'electrics',
  'steering_keel_shaft',
  'ground_tackle',
  'navigation',
  'safety_on_deck',
  'first_aid',
  'hull',
  'documents',
] as const;

export const ItemKind = z
  .object({
    id: ItemKindCode,
    itemClass: z.enum(ITEM_CLASS_CODES),
    name: z.string(),
    zone: z.string().meta({ description: 'Where it usually is.' }),
    dates: z
      .array(z.object({ fact: z.enum(FACT_CODES), whereFound: z.string() }))
      .meta({ description: 'The facts that such a thing usually has, and where each date is usually found.' }),
    attributes: z.array(Attribute),
  })
  .meta({
    id: 'ItemKind',
    example: {
      id: 'liferaft',
      itemClass: 'liferaft',
      name: 'inflatable liferaft',
      zone: 'on deck',
      dates: [{ fact: 'serviced', whereFound: 'the service certificate' }],
      attributes: [
        {
          name: 'seasonMonths',
          type: 'number',
          is: 'months',
          words: 'how many months a year the vessel operates',
          whereFound: 'the operating schedule',
        },
      ],
    },
  });
export type ItemKind = z.infer<typeof ItemKind>;
export const ItemKindPage = pageOf(ItemKind, 'ItemKindPage');
export type ItemKindPage = z.infer<typeof ItemKindPage>;

export const Scheme = z
  .object({
    id: SchemeCode,
    name: z.string(),
    weight: WeightCode,
    always: z.boolean().meta({ description: 'Applies to every vessel without being chosen.' }),
    about: z.string(),
  })
  .meta({
    id: 'Scheme',
    example: {
      id: 'solas',
      name: 'SOLAS',
      weight: 'law',
      always: false,
      about: 'The Safety of Life at Sea convention with the IMO resolutions and circulars under it.',
    },
  });
export type Scheme = z.infer<typeof Scheme>;
export const SchemePage = pageOf(Scheme, 'SchemePage');
export type SchemePage = z.infer<typeof SchemePage>;
