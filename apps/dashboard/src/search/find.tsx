/** The way to the palette that can be seen, and what its keys open. */
import { useState } from 'react';
import { strings } from '../strings/search.ts';
import { Palette } from './palette.tsx';
import { Shortcuts } from './shortcuts.tsx';
import { type Opened, useShortcuts } from './use-shortcuts.ts';

export function Find() {
  const [opened, setOpened] = useState<Opened>(null);
  useShortcuts(setOpened);
  const close = () => setOpened(null);
  return (
    <>
      <button type="button" className="find" aria-keyshortcuts="/ Control+K" onClick={() => setOpened('palette')}>
        {strings.findShort}{' '}
        <span className="key" aria-hidden="true">
          /
        </span>
      </button>
      {opened === 'palette' && <Palette onClose={close} />}
      {opened === 'shortcuts' && <Shortcuts onClose={close} />}
    </>
  );
}
