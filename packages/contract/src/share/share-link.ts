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
  madeBy: 'person:5a0c9b2e-0f6b-4a53-9c35-0d8f5b7e2a11',
  createdAt: '2026-11-25T08:12:00Z',
  expiresAt: '2026-12-25T08:12:00Z',
  views: 0,
  version: 1,
};
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
    expiresAt: Instant.meta({ description: 'At most 366 days ahead.' }),
  })
  .meta({ id: 'NewShareLink', example: { label: EXAMPLE.label, expiresAt: EXAMPLE.expiresAt } });
export type NewShareLink = z.infer<typeof NewShareLink>;

const known = {
  id: Id,
  label: z.string(),
  vesselIds: VesselIds.optional(),
  showsValue: z.boolean(),
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

export const SharedView = z
  .object({
    organisation: z.string(),
    label: z.string(),
    asOf: CalendarDay,
    expiresAt: Instant,
    wholeFleet: z.boolean(),
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
      wholeFleet: false,
      vessels: [{ name: 'Marsh Harrier', builtYear: 1998, schemes: ['solas'] }],
      due: [],
      isCut: false,
    },
  });
export type SharedView = z.infer<typeof SharedView>;
