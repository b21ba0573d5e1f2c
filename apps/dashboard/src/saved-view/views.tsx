/** The views kept for a page: which one it is, whether it was changed since, and what can be done with it. */
import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { whyItFailed } from '../api/why-it-failed.ts';
import { useMay } from '../organisation/may.ts';
import { strings } from '../strings/saved-view.ts';
import { WordChoice } from '../ui/word-choice.tsx';
import { filtersOf, isSame } from './filters.ts';
import { SaveView } from './save-view.tsx';
import { changeView, removeView, restoreView, type SavedView, savedViewsQuery } from './saved-view.query.ts';
import './saved-view.css';

type Props = {
  page: SavedView['page'];
  search: { readonly view?: string | undefined };
  onOpen: (view: SavedView | undefined) => void;
};

export function Views({ page, search, onOpen }: Props) {
  const { data } = useQuery(savedViewsQuery());
  const may = useMay();
  const [saving, setSaving] = useState(false);
  const views = data?.filter((each) => each.page === page) ?? [];
  const view = views.find(({ id }) => id === search.view);
  const filters = filtersOf(search);
  const changed = view !== undefined && !isSame(view.filters, filters);
  return (
    <div className="views">
      {views.length > 0 && (
        <WordChoice
          name={strings.view}
          any={strings.none}
          value={view?.id}
          choices={views.map(({ id, name, shared }) => ({ value: id, words: shared ? strings.shared(name) : name }))}
          onChoose={(id) => onOpen(views.find((each) => each.id === id))}
        />
      )}
      {changed && <span className="view-changed">{strings.changed}</span>}
      {may.recordFacts && (
        <>
          <Acts view={view} changed={changed} filters={filters} onOpen={onOpen} />
          <button type="button" className="word" onClick={() => setSaving(true)}>
            {view ? strings.saveAs : strings.save}
          </button>
        </>
      )}
      {saving && (
        <SaveView
          page={page}
          filters={filters}
          onSaved={(saved) => {
            setSaving(false);
            onOpen(saved);
          }}
          onClose={() => setSaving(false)}
        />
      )}
    </div>
  );
}

type ActsProps = {
  view: SavedView | undefined;
  changed: boolean;
  filters: Record<string, string>;
  onOpen: Props['onOpen'];
};

function Acts({ view, changed, filters, onOpen }: ActsProps) {
  const queries = useQueryClient();
  const [removed, setRemoved] = useState<SavedView | null>(null);
  const act = useMutation({
    mutationFn: (what: () => Promise<SavedView>) => what(),
    onSettled: () => queries.invalidateQueries({ queryKey: ['saved-views'] }),
  });
  const remove = (gone: SavedView) =>
    act.mutate(() => removeView(gone), {
      onSuccess: (left) => {
        setRemoved(left);
        onOpen(undefined);
      },
    });
  const restore = (gone: SavedView) =>
    act.mutate(() => restoreView(gone), {
      onSuccess: (back) => {
        setRemoved(null);
        onOpen(back);
      },
    });
  return (
    <>
      {view && changed && (
        <button type="button" className="word" onClick={() => act.mutate(() => changeView(view, { filters }))}>
          {strings.update}
        </button>
      )}
      {view && (
        <button type="button" className="word" onClick={() => remove(view)}>
          {strings.remove}
        </button>
      )}
      <span role="status">
        {act.error && whyItFailed(act.error)}
        {removed && strings.removed(removed.name)}
      </span>
      {removed && (
        <button type="button" className="word" onClick={() => restore(removed)}>
          {strings.undo}
        </button>
      )}
    </>
  );
}
