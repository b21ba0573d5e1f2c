/** What a rule makes of an item's facts, with its reasoning. Dates are absent where they have no meaning. */
import * as z from 'zod';
import { CalendarDay, Duration, Id, orNull } from '../shared.ts';
import { SchemeCode } from '../vessel/vessel.ts';
import { CAPACITY_CODES, FACT_CODES, TEST_CODES } from './fact.ts';

export const WeightCode = z
  .enum(['law', 'certificate', 'insurer', 'maker', 'common_practice', 'own'])
  .meta({ id: 'WeightCode', description: 'What stands behind it.' });

export const StandingCode = z.enum(['overdue', 'due', 'in_date', 'unknown']).meta({
  id: 'StandingCode',
  description:
    '`overdue` after `overdueAfter`; `due` from 30 days before `dueOn`, or for the last third of an interval that is shorter than 90 days, and while it is past its day but suspended; `unknown` while a date is missing.',
});

export const Action = z
  .object({
    kind: z.enum(['service', 'inspect', 'test', 'replace', 'withdraw', 'overhaul', 'stop_using', 'return']),
    words: z.string(),
  })
  .meta({ id: 'Action', example: { kind: 'service', words: 'Service at an approved station' } });

export const SourceStatus = z.enum(['read', 'second_hand', 'memory', 'common_practice']);

export const Source = z
  .object({
    publication: z.string().nullable(),
    clause: z.string().nullable(),
    address: z.string().nullable(),
    status: SourceStatus,
    fromMemory: z
      .string()
      .optional()
      .meta({ description: 'Which part of a text that was read is nevertheless from memory.' }),
  })
  .meta({ id: 'Source', description: 'Where the figure stands, and how far it was checked.' });

const CountedLimit = z
  .object({ limit: z.string(), on: orNull(CalendarDay), factIds: z.array(z.string()) })
  .meta({ id: 'CountedLimit' });

const Missing = z.object({ what: z.string(), whereFound: z.string() }).meta({ id: 'Missing' });

const WouldChangeIt = z
  .object({
    act: z.enum(FACT_CODES),
    test: z.enum(TEST_CODES).optional(),
    by: z.array(z.enum(CAPACITY_CODES)),
    plus: orNull(Duration),
    ifDoneOn: CalendarDay.meta({ description: 'The day the answer is asked as at.' }),
    movesTo: orNull(CalendarDay),
  })
  .meta({ id: 'WouldChangeIt' });

export const NoticeMatchCode = z
  .enum(['affected', 'may_be_affected'])
  .meta({ id: 'NoticeMatchCode', description: '`may_be_affected`: somebody must look at the thing itself.' });

const Explanation = z
  .object({
    sentence: z.string(),
    source: Source,
    binds: orNull(CountedLimit),
    alsoCounted: z.array(CountedLimit),
    setAside: z.array(z.object({ factId: z.string(), why: z.string() })),
    assumed: z.array(z.string()),
    doubts: z.array(z.string()),
    missing: z.array(Missing),
    wouldChangeIt: z.array(WouldChangeIt),
    overrideId: z
      .string()
      .optional()
      .meta({ description: 'Your own figure that it was worked out with: its id, or what the request calls it.' }),
    notice: z.object({ id: Id, match: NoticeMatchCode }).optional().meta({
      description:
        'The safety notice that asks it, and whether what is on record is enough to say that it covers the thing.',
    }),
  })
  .meta({ id: 'Explanation' });

const dates = {
  dueOn: CalendarDay.optional(),
  overdueAfter: CalendarDay.optional().meta({ description: 'The last day on which nothing is wrong yet.' }),
  expiresOn: CalendarDay.optional(),
  replaceBy: CalendarDay.optional(),
  latestPermittedOn: CalendarDay.optional(),
  windows: z.array(z.object({ opens: CalendarDay, closes: CalendarDay })),
  suspendedFrom: CalendarDay.optional().meta({
    description:
      'On the day asked the duty is suspended, as the vessel is laid up in the way its clause says. The clock runs on and the dates are as ever. What is past its day is not overdue meanwhile but due: it must be done before she returns to service.',
  }),
  suspendedUntil: CalendarDay.optional().meta({
    description: 'The last day of the suspension, where its end is known.',
  }),
};

export const SOURCE_EXAMPLE = {
  publication: 'SOLAS',
  clause: 'III/20.8.1',
  address: 'http://imorules.com/Chunk1853486106.html',
  status: 'read',
};

export const OBLIGATION_EXAMPLE = {
  ruleId: 'raft-solas',
  duty: 'service',
  scheme: 'solas',
  weight: 'law',
  action: { kind: 'service', words: 'Have the liferaft serviced at an approved station' },
  dueOn: '2026-11-04',
  overdueAfter: '2026-11-04',
  latestPermittedOn: '2027-04-04',
  windows: [],
  standing: 'overdue',
  explanation: {
    sentence:
      'Serviced on 4 November 2025. An inflatable liferaft is serviced at intervals of not more than 12 months, so it is due by 4 November 2026.',
    source: SOURCE_EXAMPLE,
    binds: {
      limit: '12 months after the last service',
      on: '2026-11-04',
      factIds: ['0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1d'],
    },
    alsoCounted: [],
    setAside: [],
    assumed: [],
    doubts: [],
    missing: [],
    wouldChangeIt: [
      {
        act: 'serviced',
        by: ['liferaft_service_station'],
        plus: 'P12M',
        ifDoneOn: '2026-11-25',
        movesTo: '2027-11-25',
      },
    ],
  },
};

export const Obligation = z
  .object({
    ruleId: z.string().meta({
      description: 'An entry of `/v1/rules`; with `notice:` before it the id of a safety notice.',
    }),
    duty: z.string().meta({
      description: 'The rule’s duty; with `.tightened` your own figure beside one that binds.',
    }),
    scheme: SchemeCode,
    weight: WeightCode,
    action: Action,
    ...dates,
    standing: StandingCode,
    explanation: Explanation,
  })
  .meta({ id: 'Obligation', example: OBLIGATION_EXAMPLE });
export type Obligation = z.infer<typeof Obligation>;

export const ObligationList = z
  .object({ asOf: CalendarDay, items: z.array(Obligation), nextCursor: z.null() })
  .meta({ id: 'ObligationList', description: 'All of them: an item has few.' });
export type ObligationList = z.infer<typeof ObligationList>;
