/** Links for outsiders. The text of a link is told once, by the answer that makes it. */
import * as z from 'zod';
import { Action, Source, StandingCode, WeightCode } from '../item/obligation.ts';
import { VesselIds } from '../organisation/role.ts';
import { CalendarDay, Id, Instant, Money, pageOf, words } from '../shared.ts';

const EXAMPLE = {
  id: '0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1e',
  label: 'the insurer, for the renewal',
  vesselIds: ['0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a'],
  showsValue: false,
  purpose: 'look' as const,
  madeBy: 'person:5a0c9b2e-0f6b-4a53-9c35-0d8f5b7e2a11',
  createdAt: '2026-11-25T08:12:00Z',
  expiresAt: '2026-12-25T08:12:00Z',
  views: 0,
  version: 1,
};
const SharePurposeCode = z.enum(['look', 'yard', 'owner']).meta({
  id: 'SharePurposeCode',
  description:
    '`look`: nothing but look. `yard`: report the work that it is given, and nothing else. `owner`: see one vessel, and say yes or no to an estimate.',
});

const shown = {
  label: words(120).meta({ description: 'For whom it is; the outsider reads it too.' }),
  vesselIds: VesselIds.optional(),
};
const ShowsValue = z.boolean().default(false).meta({
  description: 'Whether it shows what the vessels are worth.',
  default: false,
});

export const NewShareLink = z
  .strictObject({
    ...shown,
    showsValue: ShowsValue,
    purpose: SharePurposeCode.default('look'),
    findingIds: z.array(Id).min(1).max(50).optional().meta({
      description: 'The open findings that a yard is given to put right; with `yard` only, and asked for there.',
    }),
    expiresAt: Instant.meta({ description: 'At most 366 days ahead.' }),
  })
  .meta({ id: 'NewShareLink', example: { label: EXAMPLE.label, expiresAt: EXAMPLE.expiresAt } });
export type NewShareLink = z.infer<typeof NewShareLink>;

const known = {
  id: Id,
  label: z.string(),
  vesselIds: VesselIds.optional(),
  showsValue: z.boolean(),
  purpose: SharePurposeCode,
  findingIds: z.array(Id).optional(),
  madeBy: z.string().meta({ description: 'The credential that made it.' }),
  createdAt: Instant,
  expiresAt: Instant,
  revokedAt: Instant.optional(),
  views: z.int().meta({ description: 'How often it was looked at.' }),
  lastViewedAt: Instant.optional(),
  version: z.int().meta({ description: 'Its `ETag`.' }),
};
export const ShareLink = z.object(known).meta({ id: 'ShareLink', example: EXAMPLE });
export type ShareLink = z.infer<typeof ShareLink>;
export const ShareLinkPage = pageOf(ShareLink, 'ShareLinkPage');

export const ShareLinkWithText = z
  .object({
    ...known,
    token: z.string().optional().meta({
      description:
        'What the address ends with: `/shared#…`, after the mark so that no server and no referrer gets to see it. Told only this once: a repeat does not have it.',
    }),
  })
  .meta({ id: 'ShareLinkWithText', example: { ...EXAMPLE, token: 'gbs_…' } });
export type ShareLinkWithText = z.infer<typeof ShareLinkWithText>;

export const ShareLinkRevocation = z
  .strictObject({ reason: words(500).optional() })
  .meta({ id: 'ShareLinkRevocation', example: { reason: 'The renewal is through.' } });

const Look = z
  .object({
    id: Id,
    at: Instant,
    userAgent: z.string().optional().meta({ description: 'As the browser called itself.' }),
  })
  .meta({ id: 'LookAtLink', example: { id: EXAMPLE.id, at: '2026-11-26T09:00:00Z' } });
export const LookPage = pageOf(Look, 'LookAtLinkPage');

export const SharedToken = z
  .strictObject({ token: z.string().min(1).max(200).meta({ description: 'What the address ends with.' }) })
  .meta({ id: 'SharedToken', example: { token: 'gbs_…' } });

const SharedVessel = z
  .object({
    name: z.string(),
    type: z.string().optional(),
    builtYear: z.int().optional(),
    lengthOverallM: z.number().optional(),
    hullMaterial: z.string().optional(),
    rig: z.string().optional(),
    homePort: z.string().optional(),
    schemes: z.array(z.string()),
    value: Money.optional().meta({ description: 'Only where whoever made the link chose to show it.' }),
  })
  .meta({ id: 'SharedVessel', example: { name: 'Marsh Harrier', builtYear: 1998, schemes: ['solas'] } });

const SharedDue = z
  .object({
    vessel: z.string(),
    thing: z.string(),
    zone: z.string().optional(),
    quantity: z.int(),
    weight: WeightCode,
    action: Action,
    dueOn: CalendarDay.optional(),
    overdueAfter: CalendarDay.optional(),
    days: z.int().optional().meta({ description: 'Whole days to `overdueAfter`; negative when overdue.' }),
    standing: StandingCode,
    suspendedFrom: CalendarDay.optional(),
    sentence: z.string(),
    reference: Source,
  })
  .meta({ id: 'SharedDue', description: 'A line of the due list, without the ids of the house.' });

const SharedWork = z
  .object({
    at: z.int().meta({ description: 'By which it is reported.' }),
    vessel: z.string(),
    number: z.int().meta({ description: 'Of the finding aboard, so that people can name it.' }),
    zone: z.string(),
    what: z.string(),
    work: z.string().optional(),
    reads: z.string(),
    canBeReported: z.boolean(),
  })
  .meta({ id: 'SharedWork' });

const SharedOffer = z
  .object({
    number: z.int(),
    zone: z.string(),
    offer: z.string().meta({ description: 'What is to be said yes or no to.' }),
    answered: z
      .object({ yes: z.boolean(), name: z.string(), on: CalendarDay, offer: z.string() })
      .optional()
      .meta({ description: 'What was last said, and to which words.' }),
  })
  .meta({ id: 'SharedOffer' });

export const SharedView = z
  .object({
    organisation: z.string(),
    label: z.string(),
    asOf: CalendarDay,
    expiresAt: Instant,
    purpose: SharePurposeCode,
    wholeFleet: z.boolean(),
    work: z.array(SharedWork).meta({ description: 'Of a yard’s link: the work that it was given.' }),
    offers: z.array(SharedOffer).meta({ description: 'Of an owner’s link: what waits for a yes or a no.' }),
    vessels: z.array(SharedVessel),
    due: z.array(SharedDue).meta({ description: 'What has a date first, then what is suspended, then what has none.' }),
    isCut: z.boolean().meta({ description: 'There is more than a link shows: 200 of each.' }),
  })
  .meta({
    id: 'SharedView',
    example: {
      organisation: 'Curlew Sailing School',
      label: EXAMPLE.label,
      asOf: '2026-11-25',
      expiresAt: EXAMPLE.expiresAt,
      purpose: 'look',
      wholeFleet: false,
      work: [],
      offers: [],
      vessels: [{ name: 'Marsh Harrier', builtYear: 1998, schemes: ['solas'] }],
      due: [],
      isCut: false,
    },
  });
export type SharedView = z.infer<typeof SharedView>;

const token = SharedToken.shape.token;

export const SharedReport = z
  .strictObject({
    token,
    at: z.int().min(0).max(49).meta({ description: 'Which work of the link.' }),
    work: words(2000).meta({ description: 'What was done.' }),
    doneOn: CalendarDay,
    name: words(160).meta({ description: 'Who did it.' }),
    photograph: z
      .base64('must be a picture in base64')
      .max(245_000)
      .optional()
      .meta({ description: 'A picture of it, in base64: JPEG, PNG, WebP or AVIF of at most 180 kB.' }),
  })
  .meta({
    id: 'SharedReport',
    example: { token: 'gbs_…', at: 0, work: 'Hose renewed and tested', doneOn: '2026-11-24', name: 'Ines Vale' },
  });

export const SharedAnswer = z
  .strictObject({
    token,
    number: z.int().min(1).max(999_999),
    yes: z.boolean(),
    name: words(160).meta({ description: 'Who says so: the owner.' }),
    offer: z.string().max(4000).meta({ description: 'The very words that were shown.' }),
    words: words(1000).optional(),
  })
  .meta({
    id: 'SharedAnswer',
    example: {
      ...{ token: 'gbs_…', number: 3, yes: true, name: 'Maren Holt' },
      offer: 'Gas hose cracked: renew it, about 180.00 EUR, says Ines Vale.',
    },
  });

export const SharedDone = z
  .object({ reads: z.string().meta({ description: 'How it stands now.' }) })
  .meta({ id: 'SharedDone', example: { reads: 'Reported done on 2026-11-24; nobody else has looked yet' } });
