/** Finds a vessel, a thing, a serial number, a rule or a page, and goes there; by keyboard throughout. */
import { useDebouncedValue } from '@mantine/hooks';
import { useQuery } from '@tanstack/react-query';
import { useRouter } from '@tanstack/react-router';
import { type KeyboardEvent, useState } from 'react';
import { whyItFailed } from '../api/why-it-failed.ts';
import { useMay } from '../organisation/may.ts';
import { strings } from '../strings/search.ts';
import { Dialog } from '../ui/dialog.tsx';
import { foundGroups } from './found.ts';
import { FoundList, optionId } from './found-list.tsx';
import { searchQuery } from './search.query.ts';
import './palette.css';

const SETTLES_MS = 120;

export function Palette({ onClose }: { onClose: () => void }) {
  const [typed, setTyped] = useState('');
  const [words] = useDebouncedValue(typed.trim(), SETTLES_MS);
  const [at, setAt] = useState(0);
  const router = useRouter();
  const { data, error, isFetching } = useQuery(searchQuery(words));
  const groups = foundGroups(words, data, useMay());
  const all = groups.flatMap(({ found }) => found);
  const active = Math.min(at, all.length - 1);
  const go = (index: number) => {
    const chosen = all[index];
    if (!chosen) return;
    onClose();
    router.history.push(chosen.href);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const to = { ArrowDown: active + 1, ArrowUp: active - 1, Home: 0, End: all.length - 1 }[event.key];
    if (event.key === 'Enter') go(active);
    if (to === undefined || event.metaKey || event.ctrlKey) return;
    event.preventDefault();
    setAt(Math.max(0, Math.min(to, all.length - 1)));
  };
  return (
    <Dialog name={strings.find} onClose={onClose}>
      <input
        className="field-box palette-box"
        role="combobox"
        aria-label={strings.find}
        aria-expanded="true"
        aria-controls="found"
        aria-activedescendant={all[active] && optionId(active)}
        aria-autocomplete="list"
        autoComplete="off"
        placeholder={strings.placeholder}
        value={typed}
        onChange={(event) => {
          setTyped(event.currentTarget.value);
          setAt(0);
        }}
        onKeyDown={onKeyDown}
      />
      <FoundList groups={groups} active={active} onPoint={setAt} onChoose={go} />
      <p className="palette-told quiet" role="status">
        {error ? whyItFailed(error) : words !== '' && !isFetching && strings.found(all.length)}
      </p>
      <p className="palette-hint quiet">{strings.hint}</p>
    </Dialog>
  );
}
