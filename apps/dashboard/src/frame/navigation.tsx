/** Where to go: at the side of a desk, along the top of a tablet, under the thumb on a phone. */
import { Link, useRouterState } from '@tanstack/react-router';
import { useEffect, useState } from 'react';
import { useMay } from '../organisation/may.ts';
import { strings } from '../strings/frame.ts';
import { GROUPS, PAGES, type PageEntry } from './pages.ts';
import './navigation.css';

export function Navigation() {
  const may = useMay();
  const [open, setOpen] = useState(false);
  const path = useRouterState({ select: (state) => state.location.pathname });
  // biome-ignore lint/correctness/useExhaustiveDependencies: going anywhere puts it away
  useEffect(() => setOpen(false), [path]);
  const shown = PAGES.filter(({ permission }) => permission === undefined || may[permission]);
  return (
    <nav
      aria-label={strings.navigation}
      className={open ? 'navigation open' : 'navigation'}
      onKeyDown={(event) => event.key === 'Escape' && setOpen(false)}
    >
      {GROUPS.map((group) => (
        <Group key={group} entries={shown.filter((entry) => entry.group === group)} />
      ))}
      <button type="button" className="navigation-more" aria-expanded={open} onClick={() => setOpen(!open)}>
        {open ? strings.lessPages : strings.morePages}
      </button>
    </nav>
  );
}

function Group({ entries }: { entries: readonly PageEntry[] }) {
  if (entries.length === 0) return null;
  return (
    <ul>
      {entries.map(({ to, words, Count, thumb }) => (
        <li key={to} className={thumb ? 'thumb' : undefined}>
          <Link to={to} activeOptions={{ exact: to === '/', includeSearch: false }}>
            {words}
            {Count && <Count />}
          </Link>
        </li>
      ))}
    </ul>
  );
}
