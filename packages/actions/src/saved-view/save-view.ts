/** Keeps a list's filters under a name, for oneself or for everybody in the organisation. */
import { insertSavedView, type SavedViewRecord } from '@garboard/db/saved-view/saved-views.ts';
import { actorText, audit } from '../audit.ts';
import type { ActionContext } from '../context.ts';
import { newId } from '../new-id.ts';
import { done, type Written } from '../result.ts';
import { write } from '../write.ts';

export type ViewToSave = Pick<SavedViewRecord, 'name' | 'page' | 'filters'> & { readonly shared: boolean };

export function saveView(
  ctx: ActionContext,
  { shared, ...view }: ViewToSave,
): Promise<Written<SavedViewRecord, never>> {
  return write(ctx, 'record_facts', async (write) => {
    const record: SavedViewRecord = {
      ...{ ...view, id: newId(ctx.now), ownerId: shared ? null : ctx.actor.id, savedBy: actorText(ctx.actor) },
      ...{ createdAt: ctx.now.toISOString(), removedAt: null, version: 1 },
    };
    await insertSavedView(write.tx, ctx.organisationId, record);
    audit(write, {
      verb: 'save_view',
      subject: 'saved_view',
      subjectId: record.id,
      before: null,
      after: record,
    });
    return done(record);
  });
}
