/** What is answered to a safety notice, thing by thing. Answers are only ever added. */
import * as z from 'zod';
import { CAPACITY_CODES, EVIDENCE_CODES } from '../item/fact.ts';
import { NoticeMatchCode, OBLIGATION_EXAMPLE, Obligation } from '../item/obligation.ts';
import { CalendarDay, Id, Instant, orNull, pageOf, words } from '../shared.ts';
import { NoticeThing } from './notice.ts';

const AnswerCode = z.enum(['done', 'not_affected', 'deferred', 'reopened']).meta({
  id: 'NoticeAnswerCode',
  description:
    '`done`: what the notice asks. `not_affected`: somebody looked. `deferred`: put off by somebody named; it moves no date. `reopened`: the answer it names was a mistake.',
});

const answer = {
  answer: AnswerCode,
  on: CalendarDay.meta({ description: 'The day on which it was done, looked at or decided.' }),
  doneBy: z
    .strictObject({
      name: words(160),
      capacity: z.enum(CAPACITY_CODES).optional().meta({ description: 'Asked for with `done`.' }),
      certificate: words(160).optional(),
    })
    .meta({ description: 'Who did it, looked, or decided.' }),
  evidence: z.enum(EVIDENCE_CODES).optional().meta({ description: 'What shows it; asked for with `done`.' }),
  reference: words(120).optional().meta({ description: 'A work order, an invoice, the maker’s own number.' }),
  serialRead: words(120).optional().meta({
    description:
      'Read on the thing itself, and written on the item. Asked for with `not_affected` where the notice names serial numbers.',
  }),
  replaced: z.boolean().default(false).meta({
    description:
      'With `done`: another came in its place. It is recorded as a fact; without `serialRead` the item’s number is taken away.',
  }),
  until: CalendarDay.optional().meta({ description: '`deferred`: the day on which it is looked at again.' }),
  note: words(2000).optional().meta({ description: 'Why: asked for with `deferred` and `reopened`.' }),
  corrects: Id.optional().meta({ description: 'The answer that this one strikes out and stands in for.' }),
};

const EXAMPLE = {
  answer: 'done',
  on: '2026-10-01',
  doneBy: { name: 'Ines Vale', capacity: 'gas_engineer' },
  evidence: 'certificate',
  reference: 'W-118',
  replaced: true,
  serialRead: 'AC0001',
};

export const NewNoticeAnswer = z.strictObject(answer).meta({ id: 'NewNoticeAnswer', example: EXAMPLE });
export type NewNoticeAnswer = z.infer<typeof NewNoticeAnswer>;

const ANSWER_EXAMPLE = {
  ...EXAMPLE,
  id: '0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1d',
  itemId: '0198c5a3-11d2-7f40-8b6e-0c9d3e2f1a4b',
  corrects: null,
  struckOutBy: null,
  recordedAt: '2026-10-02T08:12:00Z',
  recordedBy: 'session:0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1e',
};

const ABOUT_EXAMPLE = {
  vessel: { id: '0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a', name: 'Marsh Harrier' },
  item: {
    id: '0198c5a3-11d2-7f40-8b6e-0c9d3e2f1a4b',
    kind: 'gas_hose',
    label: 'Gas hose, cooker',
    maker: 'Quillmere Hose Works',
    model: null,
    serialNumber: null,
    quantity: 1,
  },
};
const UNREAD = 'its serial number is not on record';

export const NoticeAnswer = z
  .object({
    id: Id,
    itemId: Id,
    ...answer,
    replaced: z.boolean(),
    corrects: orNull(Id),
    struckOutBy: orNull(Id).meta({ description: 'The answer that struck this one out; it stays visible.' }),
    recordedAt: Instant,
    recordedBy: z.string(),
  })
  .meta({ id: 'NoticeAnswer', example: ANSWER_EXAMPLE });
export type NoticeAnswer = z.infer<typeof NoticeAnswer>;

export const AnsweredNotice = z
  .object({
    answer: NoticeAnswer,
    asOf: CalendarDay,
    obligations: z.array(Obligation).meta({ description: 'The item’s, as they stand after the answer.' }),
  })
  .meta({
    id: 'AnsweredNotice',
    example: { answer: ANSWER_EXAMPLE, asOf: '2026-11-25', obligations: [OBLIGATION_EXAMPLE] },
  });
export type AnsweredNotice = z.infer<typeof AnsweredNotice>;

const ItemState = z.enum(['affected', 'may_be_affected', 'answered']).meta({
  id: 'NoticeItemStateCode',
  description: '`affected` and `may_be_affected` still wait for an answer.',
});

export const NoticeItem = z
  .object({
    vessel: z.object({ id: Id, name: z.string() }),
    item: NoticeThing,
    state: ItemState,
    because: z.array(z.string()).meta({ description: 'What was compared, or what could not be.' }),
    answers: z
      .array(NoticeAnswer)
      .meta({ description: 'Every answer, struck-out ones too, in the order in which they were given.' }),
  })
  .meta({
    id: 'NoticeItem',
    example: { ...ABOUT_EXAMPLE, state: 'may_be_affected', because: [UNREAD], answers: [] },
  });
export type NoticeItem = z.infer<typeof NoticeItem>;

export const NoticeItemPage = z
  .object({
    asOf: CalendarDay,
    items: pageOf(NoticeItem, 'NoticeItemPage').shape.items,
    nextCursor: z.string().nullable(),
  })
  .meta({ id: 'NoticeItemPage' });
export type NoticeItemPage = z.infer<typeof NoticeItemPage>;

const Verdict = z.union([NoticeMatchCode, z.literal('not_affected')]);

export const NoticeMatches = z
  .object({
    counts: z.object({ affected: z.int(), mayBeAffected: z.int(), notAffected: z.int(), vessels: z.int() }),
    items: z
      .array(
        z.object({
          vessel: z.object({ id: Id, name: z.string() }),
          item: NoticeThing,
          match: Verdict,
          because: z.array(z.string()),
          missing: z.array(z.string()).meta({ description: 'What is not on record and would settle it.' }),
        }),
      )
      .meta({
        description: 'At most 200: what it covers, what it may cover, then others of its kinds with the reason.',
      }),
  })
  .meta({
    id: 'NoticeMatches',
    description: 'What the notice would bear on. Nothing is written.',
    example: {
      counts: { affected: 0, mayBeAffected: 1, notAffected: 3, vessels: 1 },
      items: [{ ...ABOUT_EXAMPLE, match: 'may_be_affected', because: [UNREAD], missing: ['serial number'] }],
    },
  });
export type NoticeMatches = z.infer<typeof NoticeMatches>;
