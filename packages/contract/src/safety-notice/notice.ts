/** A safety notice: what its maker, or an authority, says of certain things, and what to do about them. */
import * as z from 'zod';
import { ItemKindCode } from '../item/item.ts';
import { CalendarDay, Id, Instant, orNull, pageOf, words } from '../shared.ts';

const serial = words(120);
const END = 'Inclusive; absent: open.';

const SerialRange = z
  .strictObject({
    from: serial.optional().meta({ description: END, example: 'AB1200' }),
    to: serial.optional().meta({ description: END, example: 'AB1399' }),
  })
  .meta({
    id: 'SerialRange',
    description: 'One number alone has both ends the same. Case, spaces and punctuation do not count.',
  });

const Deadline = z
  .discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('on'), on: CalendarDay }),
    z.strictObject({ kind: z.literal('days_after_issue'), days: z.int().min(0).max(3_650) }),
    z.strictObject({ kind: z.literal('before_next_use') }),
  ])
  .meta({ id: 'NoticeDeadline', description: 'By when it must be answered.' });

const NoticeAction = z
  .strictObject({
    kind: z.enum(['stop_using', 'inspect', 'return', 'replace']),
    words: words(300).meta({ example: 'Have the hose replaced by a gas engineer' }),
  })
  .meta({ id: 'NoticeAction' });

const content = {
  title: words(160).meta({ example: 'Hoses that may come off the tail' }),
  publisher: words(160).meta({ description: 'The maker, or the authority.', example: 'Quillmere Hose Works' }),
  reference: words(80).optional().meta({ example: 'QH-2026-09' }),
  issuedOn: CalendarDay.meta({ description: 'The day of the notice; not in the future.' }),
  address: z
    .url({ protocol: /^https?$/, error: 'must be an address that begins with http:// or https://' })
    .max(500)
    .optional()
    .meta({ description: 'Where it can be read. An address, a `document` or both.' }),
  document: words(300).optional().meta({ example: 'Letter to owners, 3 September 2026' }),
  kinds: z.array(ItemKindCode).min(1).max(100).meta({ description: 'The kinds of thing that it is about.' }),
  makers: z.array(words(120)).max(50).default([]).meta({ description: 'Any of them; none: whoever made it.' }),
  models: z.array(words(120)).max(200).default([]).meta({ description: 'Any of them; none: every model.' }),
  serials: z.array(SerialRange).max(500).default([]).meta({ description: 'Any of them; none: every serial number.' }),
  manufactured: z
    .strictObject({ from: CalendarDay.optional(), to: CalendarDay.optional() })
    .optional()
    .meta({ description: 'Made between these days, both inclusive; an absent end is open.' }),
  hazard: words(500).meta({ description: 'What can happen.', example: 'gas can escape below' }),
  action: NoticeAction,
  deadline: Deadline,
  weight: z.enum(['maker', 'law']).meta({ description: '`law` when an authority has ordered it.' }),
};

const EXAMPLE = {
  title: 'Hoses that may come off the tail',
  publisher: 'Quillmere Hose Works',
  reference: 'QH-2026-09',
  issuedOn: '2026-09-03',
  document: 'Letter to owners, 3 September 2026',
  kinds: ['gas_hose'],
  makers: ['Quillmere Hose Works'],
  models: [],
  serials: [{ from: 'AB1200', to: 'AB1399' }],
  hazard: 'gas can escape below',
  action: { kind: 'replace', words: 'Have the hose replaced by a gas engineer' },
  deadline: { kind: 'on', on: '2026-12-31' },
  weight: 'maker',
};

export const NewSafetyNotice = z.strictObject(content).meta({ id: 'NewSafetyNotice', example: EXAMPLE });
export type NewSafetyNotice = z.infer<typeof NewSafetyNotice>;

export const NewNoticeWithdrawal = z
  .strictObject({ reason: words(500) })
  .meta({ id: 'NewNoticeWithdrawal', example: { reason: 'The maker has taken it back.' } });
export type NewNoticeWithdrawal = z.infer<typeof NewNoticeWithdrawal>;

const NoticeCounts = z
  .object({
    affected: z.int().meta({ description: 'Covered, and not yet answered.' }),
    mayBeAffected: z.int().meta({ description: 'Somebody must look, and nobody has yet.' }),
    answered: z.int(),
  })
  .meta({ id: 'NoticeCounts', description: 'Entries of the vessels’ lists.' });

export const NoticeStateCode = z.enum(['open', 'answered', 'withdrawn']).meta({
  id: 'NoticeStateCode',
  description: '`open`: something is still to be answered. `answered`: nothing is, or nothing aboard is covered.',
});

export const SafetyNotice = z
  .object({
    id: Id,
    ...content,
    makers: z.array(z.string()),
    models: z.array(z.string()),
    serials: z.array(SerialRange),
    dueOn: CalendarDay.meta({ description: 'The last day on which nothing is wrong yet.' }),
    state: NoticeStateCode,
    counts: NoticeCounts,
    recordedAt: Instant,
    recordedBy: z.string(),
    withdrawn: z
      .object({
        on: CalendarDay.meta({ description: 'The first day on which it asks nothing more.' }),
        reason: z.string(),
        recordedAt: Instant,
        recordedBy: z.string(),
      })
      .optional(),
    version: z.int().meta({ description: 'Its `ETag`: 1 open, 2 withdrawn. Answers do not change it.' }),
  })
  .meta({
    id: 'SafetyNotice',
    example: {
      id: '0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1d',
      ...EXAMPLE,
      dueOn: '2026-12-31',
      state: 'open',
      counts: { affected: 2, mayBeAffected: 1, answered: 4 },
      recordedAt: '2026-09-10T08:12:00Z',
      recordedBy: 'session:0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1e',
      version: 1,
    },
  });
export type SafetyNotice = z.infer<typeof SafetyNotice>;
export const SafetyNoticePage = pageOf(SafetyNotice, 'SafetyNoticePage');
export type SafetyNoticePage = z.infer<typeof SafetyNoticePage>;

/** A thing as a notice names it. */
export const NoticeThing = z
  .object({
    id: Id,
    kind: z.string(),
    label: z.string(),
    maker: orNull(z.string()),
    model: orNull(z.string()),
    serialNumber: orNull(z.string()),
    quantity: z.int(),
  })
  .meta({ id: 'NoticeThing' });
