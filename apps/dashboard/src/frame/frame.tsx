/** Around every page: who is signed in, where to go, and what this program is not. */

import { isStatus } from '@garboard/client/api-problem.ts';
import { useQuery } from '@tanstack/react-query';
import { Outlet, useMatches, useRouterState } from '@tanstack/react-router';
import { useEffect, useRef } from 'react';
import { whyItFailed } from '../api/why-it-failed.ts';
import { countsQuery } from '../due-list/due.query.ts';
import { Nowhere } from '../organisation/nowhere.tsx';
import { sessionQuery } from '../organisation/session.query.ts';
import { SignInPage } from '../organisation/sign-in-page.tsx';
import { Find } from '../search/find.tsx';
import { strings } from '../strings/frame.ts';
import { formatInstant } from '../ui/calendar.ts';
import { Failed } from '../ui/failed.tsx';
import { ThemeSwitch } from '../ui/theme-switch.tsx';
import { Connection } from './connection.tsx';
import { Navigation } from './navigation.tsx';
import { PrintLine } from './print-line.tsx';
import './frame.css';

/** A route says of itself that it stands outside: it is for whoever has no session, or no organisation. */
export function Frame() {
  const outside = useMatches({ select: (matches) => matches.some(({ staticData }) => staticData.outside) });
  return outside ? <Outlet /> : <Inside />;
}

function Inside() {
  const { data, error, isPending, refetch } = useQuery(sessionQuery());
  const anywhere = useMatches({ select: (matches) => matches.some(({ staticData }) => staticData.anywhere) });
  if (isPending) return null;
  if (isStatus(error, 401)) return <SignInPage />;
  if (!data) {
    return (
      <main className="signed-out">
        <Failed what={strings.unreachable} why={whyItFailed(error)} again={refetch} />
      </main>
    );
  }
  if (!data.organisation) return anywhere ? <Beside /> : <Nowhere />;
  return (
    <div className="frame">
      <a href="#page" className="skip">
        {strings.skip}
      </a>
      <div className="side">
        <p className="organisation">{data.organisation.name}</p>
        <PrintLine organisation={data.organisation.name} />
        <Find />
        <Navigation />
      </div>
      <Page />
      <Foot />
    </div>
  );
}

/** A route that says so is there without an organisation too. */
function Beside() {
  return (
    <main className="signed-out" id="page">
      <Outlet />
    </main>
  );
}

/** A new page starts at its beginning, for the keyboard and the screen reader too. */
function Page() {
  const path = useRouterState({ select: (state) => state.location.pathname });
  const main = useRef<HTMLElement>(null);
  const before = useRef(path);
  useEffect(() => {
    if (before.current !== path) main.current?.focus({ preventScroll: true });
    before.current = path;
  }, [path]);
  return (
    <main id="page" ref={main} tabIndex={-1}>
      <Connection />
      <Outlet />
    </main>
  );
}

function Foot() {
  const { dataUpdatedAt } = useQuery(countsQuery(undefined));
  return (
    <footer className="foot">
      <ThemeSwitch />
      <p>{dataUpdatedAt > 0 && strings.factsKnownTo(formatInstant(dataUpdatedAt))}</p>
      <p>{strings.caution}</p>
    </footer>
  );
}
