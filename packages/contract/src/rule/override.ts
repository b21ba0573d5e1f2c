/** An organisation's own figure in place of a published interval. */
import * as z from 'zod';
import { CalendarDay, Duration, Id, Instant, pageOf, words } from '../shared.ts';

const figure = {
  itemId: Id.optional().meta({
    description: 'For this item only. Absent: for everything aboard that the rule bears on.',
  }),
  ruleId: z.string().max(80).meta({ description: 'An entry of `/v1/rules`.', example: 'lpg-hose' }),
  duty: z.string().max(80).meta({ description: 'The id of one of the rule’s duties.', example: 'replacement' }),
  period: Duration.meta({
    description:
      'Counted in place of the interval that the duty names first, from whatever it counts; another limit of another length stays as published.',
  }),
  weight: z.enum(['maker', 'insurer', 'own']).meta({ description: 'What stands behind the figure.' }),
  decidedBy: words(120).meta({ description: 'Who decided it.', example: 'Anna Berg' }),
  reason: words(500).meta({ example: 'The maker of this hose gives it four years.' }),
  document: words(300).meta({ description: 'Where it stands.', example: 'Data sheet H-88, page 2' }),
  from: CalendarDay.meta({ description: 'The first day on which it counts; not in the future.' }),
};

export const NewOverride = z.strictObject(figure).meta({
  id: 'NewOverride',
  example: {
    ruleId: 'lpg-hose',
    duty: 'replacement',
    period: 'P4Y',
    weight: 'maker',
    decidedBy: 'Anna Berg',
    reason: 'The maker of this hose gives it four years.',
    document: 'Data sheet H-88, page 2',
    from: '2026-03-01',
  },
});
export type NewOverride = z.infer<typeof NewOverride>;

export const NewOverrideEnding = z
  .strictObject({ reason: words(500) })
  .meta({ id: 'NewOverrideEnding', example: { reason: 'Another make of hose was fitted.' } });
export type NewOverrideEnding = z.infer<typeof NewOverrideEnding>;

const OverrideEnding = z
  .object({
    on: CalendarDay.meta({ description: 'The first day on which it counts no more.' }),
    reason: z.string(),
    recordedAt: Instant,
    recordedBy: z.string(),
  })
  .meta({ id: 'OverrideEnding' });

export const Override = z
  .object({
    id: Id,
    vesselId: Id,
    ...figure,
    recordedAt: Instant,
    recordedBy: z.string().meta({ description: 'The credential that set it.' }),
    ended: OverrideEnding.optional(),
    version: z.int().meta({ description: 'Its `ETag`: 1 in force, 2 ended.' }),
  })
  .meta({
    id: 'Override',
    example: {
      id: '0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1d',
      vesselId: '0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a',
      ruleId: 'lpg-hose',
      duty: 'replacement',
      period: 'P4Y',
      weight: 'maker',
      decidedBy: 'Anna Berg',
      reason: 'The maker of this hose gives it four years.',
      document: 'Data sheet H-88, page 2',
      from: '2026-03-01',
      recordedAt: '2026-03-01T08:12:00Z',
      recordedBy: 'person:0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1e',
      version: 1,
    },
  });
export type Override = z.infer<typeof Override>;
export const OverridePage = pageOf(Override, 'OverridePage');
export type OverridePage = z.infer<typeof OverridePage>;
