import { useMutation, useQueryClient } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import { whyItFailed } from '../api/why-it-failed.ts';
import { useOnceKey } from '../item/use-once-key.ts';
import { strings } from '../strings/saved-view.ts';
import { Dialog } from '../ui/dialog.tsx';
import { TextField } from '../ui/fields.tsx';
import { type NewSavedView, type SavedView, savedViewsQuery, saveView } from './saved-view.query.ts';

type Props = {
  page: SavedView['page'];
  filters: Record<string, string>;
  onSaved: (view: SavedView) => void;
  onClose: () => void;
};

export function SaveView({ page, filters, onSaved, onClose }: Props) {
  const [name, setName] = useState('');
  const [shared, setShared] = useState(false);
  const [fault, setFault] = useState<string>();
  const keyFor = useOnceKey();
  const queries = useQueryClient();
  const save = useMutation({
    mutationFn: (view: NewSavedView) => saveView(view, keyFor(view)),
    onSuccess: (view) => {
      // In the list at once, so that the page finds it under its own name.
      queries.setQueryData(savedViewsQuery().queryKey, (all: SavedView[] | undefined) => [...(all ?? []), view]);
      void queries.invalidateQueries({ queryKey: ['saved-views'] });
      onSaved(view);
    },
  });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const typed = name.trim();
    setFault(typed === '' ? strings.nameFault : undefined);
    if (typed !== '') save.mutate({ name: typed, page, filters, shared });
  };
  return (
    <Dialog name={strings.saveTitle} onClose={onClose}>
      <h2>{strings.saveTitle}</h2>
      <form className="form save-view" onSubmit={submit} noValidate>
        <TextField
          id="view-name"
          name={strings.name}
          help={strings.nameHelp}
          fault={fault}
          value={name}
          onChange={setName}
        />
        <label>
          <input type="checkbox" checked={shared} onChange={(event) => setShared(event.currentTarget.checked)} />{' '}
          {strings.share}
        </label>
        {save.error && <p role="alert">{whyItFailed(save.error)}</p>}
        <p className="acts">
          <button type="submit" className="first" disabled={save.isPending}>
            {strings.submit}
          </button>
          <button type="button" onClick={onClose}>
            {strings.leave}
          </button>
        </p>
      </form>
    </Dialog>
  );
}
