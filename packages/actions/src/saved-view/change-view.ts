/** Changes, removes or brings back a view. A removed one is kept, so that the removal can be undone. */
import { loadSavedView, type SavedViewRecord, updateSavedView } from '@garboard/db/saved-view/saved-views.ts';
import { audit } from '../audit.ts';
import type { ActionContext } from '../context.ts';
import { done, refused, type Written } from '../result.ts';
import { write } from '../write.ts';

type Known = { readonly viewId: string; readonly expectedVersion: number };
export type ViewChange = Known & {
  readonly change: Partial<Pick<SavedViewRecord, 'name' | 'filters'>> & { readonly shared?: boolean };
};
type Changed = Promise<Written<SavedViewRecord, 'not_found' | 'stale'>>;

export function changeView(ctx: ActionContext, { change: { shared, ...said }, ...known }: ViewChange): Changed {
  const owner = shared === undefined ? {} : { ownerId: shared ? null : ctx.actor.id };
  return rewrite(ctx, known, 'change_view', { ...said, ...owner });
}

export function removeView(ctx: ActionContext, known: Known): Changed {
  return rewrite(ctx, known, 'remove_view', { removedAt: ctx.now.toISOString() });
}

export function restoreView(ctx: ActionContext, known: Known): Changed {
  return rewrite(ctx, known, 'restore_view', { removedAt: null });
}

type Verb = 'change_view' | 'remove_view' | 'restore_view';

function rewrite(ctx: ActionContext, known: Known, verb: Verb, change: Partial<SavedViewRecord>): Changed {
  return write(ctx, 'record_facts', async (write) => {
    const before = await loadSavedView(write.tx, known.viewId, ctx.actor.id);
    if (!before || (before.removedAt !== null && verb !== 'restore_view')) return refused({ kind: 'not_found' });
    const after = { ...before, ...change, version: before.version + 1 };
    if (before.version !== known.expectedVersion) return refused({ kind: 'stale', version: before.version });
    if (verb === 'restore_view' && before.removedAt === null) return done(before);
    if (!(await updateSavedView(write.tx, after))) return refused({ kind: 'stale', version: before.version + 1 });
    audit(write, { verb, subject: 'saved_view', subjectId: after.id, before, after });
    return done(after);
  });
}
