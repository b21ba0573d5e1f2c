import type { SavedView } from '@garboard/contract/saved-view/saved-view.ts';
import type { SavedViewRecord } from '@garboard/db/saved-view/saved-views.ts';

export function presentSavedView(view: SavedViewRecord): SavedView {
  const { id, name, page, filters, ownerId, savedBy, createdAt, version } = view;
  return { id, name, page, filters: { ...filters }, shared: ownerId === null, savedBy, createdAt, version };
}
