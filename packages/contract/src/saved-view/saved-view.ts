/** A list as somebody likes to see it, kept under a name: one's own, or everybody's in the organisation. */
import * as z from 'zod';
import { Id, Instant, pageOf, words } from '../shared.ts';

const view = {
  name: words(80).meta({ example: 'Extinguishers before Easter' }),
  page: z.enum(['fleet', 'due']).meta({ description: 'Which page it is a view of.' }),
  filters: z
    .record(z.string().regex(/^[A-Za-z]{1,40}$/, 'must be the name of a filter'), words(200))
    .refine((filters) => Object.keys(filters).length <= 20, 'must be at most 20 filters')
    .meta({
      description: 'As they stand in the page’s address.',
      example: { kind: 'portable_extinguisher_dry_powder', until: '6-months' },
    }),
  shared: z.boolean().meta({ description: 'Whether everybody in the organisation sees it, or only whoever saved it.' }),
};

const EXAMPLE = {
  name: 'Extinguishers before Easter',
  page: 'due',
  filters: { kind: 'portable_extinguisher_dry_powder', until: '6-months' },
  shared: false,
};

export const NewSavedView = z.strictObject(view).meta({ id: 'NewSavedView', example: EXAMPLE });
export type NewSavedView = z.infer<typeof NewSavedView>;

export const SavedViewChange = z
  .strictObject({
    name: view.name.optional(),
    filters: view.filters.optional(),
    shared: view.shared.optional(),
  })
  .meta({ id: 'SavedViewChange', example: { name: 'Extinguishers before Whitsun' } });
export type SavedViewChange = z.infer<typeof SavedViewChange>;

export const SavedView = z
  .object({
    id: Id,
    ...view,
    savedBy: z.string().meta({ description: 'The credential that saved it first.' }),
    createdAt: Instant,
    version: z.int().meta({ description: 'Its `ETag`.' }),
  })
  .meta({
    id: 'SavedView',
    example: {
      id: '0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1d',
      ...EXAMPLE,
      savedBy: 'person:0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1e',
      createdAt: '2026-11-25T08:12:00Z',
      version: 1,
    },
  });
export type SavedView = z.infer<typeof SavedView>;
export const SavedViewPage = pageOf(SavedView, 'SavedViewPage');
export type SavedViewPage = z.infer<typeof SavedViewPage>;
