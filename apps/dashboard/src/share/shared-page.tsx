/** What a link shows to whoever has it. The text stands after the mark in the address, where no server sees it. */
import { isStatus } from '@garboard/client/api-problem.ts';
import { useQuery } from '@tanstack/react-query';
import { useRouterState } from '@tanstack/react-router';
import { whyItFailed } from '../api/why-it-failed.ts';
import { sourceInShort } from '../item/source-words.ts';
import { Outside } from '../organisation/outside.tsx';
import { shared as words } from '../strings/share.ts';
import { formatDay, formatInstant } from '../ui/calendar.ts';
import { Caution } from '../ui/caution.tsx';
import { Day } from '../ui/day.tsx';
import { Failed } from '../ui/failed.tsx';
import { Ledger } from '../ui/ledger.tsx';
import { Standing } from '../ui/standing.tsx';
import { Waiting } from '../ui/waiting.tsx';
import { Offers } from './offers.tsx';
import { type SharedView, sharedQuery } from './share.query.ts';
import { YardWork } from './yard-work.tsx';
import './share.css';

const { columns } = words;

export function SharedPage() {
  const token = useRouterState({ select: ({ location }) => location.hash });
  const { data, error, isPending, refetch } = useQuery({ ...sharedQuery(token), enabled: token !== '' });
  if (token === '' || isStatus(error, 404) || isStatus(error, 422))
    return <Outside title={words.gone} how={words.goneHow} />;
  if (isPending) return <Waiting>{words.waiting}</Waiting>;
  if (!data)
    return (
      <Outside title={words.failed}>
        <Failed what={words.failed} why={whyItFailed(error)} again={refetch} />
      </Outside>
    );
  if (data.purpose === 'yard') return <YardWork view={data} token={token} />;
  return <Shown view={data} token={token} />;
}

function Shown({ view, token }: { view: SharedView; token: string }) {
  const { organisation, label, asOf, expiresAt, due } = view;
  const standing = (asked: string) => due.filter((row) => row.standing === asked && !row.suspendedFrom).length;
  return (
    <Outside
      wide
      title={titleOf(view)}
      how={words.by(organisation, label, formatDay(asOf), formatInstant(Date.parse(expiresAt)))}
    >
      <p className="voice">{words.counts(standing('overdue'), standing('unknown'))}</p>
      <Caution>{words.caution}</Caution>
      {view.purpose === 'owner' && <Offers view={view} token={token} />}
      <Vessels view={view} />
      {due.length === 0 ? <p>{words.none}</p> : <Due rows={due} many={view.vessels.length > 1} />}
      {view.isCut && <p className="quiet">{words.cut}</p>}
    </Outside>
  );
}

function titleOf({ wholeFleet, vessels, organisation }: SharedView): string {
  if (wholeFleet) return words.fleet(organisation);
  const [only, ...others] = vessels;
  return only && others.length === 0 ? words.vessel(only.name) : words.some(organisation);
}

function Vessels({ view: { vessels } }: { view: SharedView }) {
  return (
    <ul className="shared-vessels">
      {vessels.map((vessel) => (
        <li key={vessel.name}>
          <strong>{vessel.name}</strong> <span className="quiet">{particulars(vessel)}</span>
        </li>
      ))}
    </ul>
  );
}

function particulars(vessel: SharedView['vessels'][number]): string {
  const { type, builtYear, lengthOverallM, hullMaterial, rig, homePort, value } = vessel;
  return [
    type?.replaceAll('_', ' '),
    lengthOverallM && words.metres(lengthOverallM),
    hullMaterial?.replaceAll('_', ' '),
    rig,
    builtYear && words.built(builtYear),
    homePort,
    value && words.worth(`${value.amount} ${value.currency}`),
  ]
    .filter(Boolean)
    .join(', ');
}

function Due({ rows, many }: { rows: SharedView['due']; many: boolean }) {
  const shown = [
    columns.standing,
    columns.due,
    columns.thing,
    ...(many ? [columns.vessel] : []),
    columns.do,
    columns.why,
  ];
  return (
    <Ledger caption={words.caption} columns={shown} className="shared-due">
      {rows.map((row, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: an outsider is told no ids, and the rows never move
        <tr key={index}>
          <td>
            <Standing standing={row.standing} />
            {row.suspendedFrom && <span className="sub">{words.suspended}</span>}
          </td>
          <td data-of={columns.due}>{row.dueOn ? <Day on={row.dueOn} /> : words.noDate}</td>
          <th scope="row">
            <span className="row-name">{row.quantity > 1 ? `${row.thing} ×${row.quantity}` : row.thing}</span>
            {row.zone && <span className="sub">{row.zone}</span>}
          </th>
          {many && <td data-of={columns.vessel}>{row.vessel}</td>}
          <td data-of={columns.do}>{row.action.words}</td>
          <td data-of={columns.why}>
            {row.sentence} <span className="quiet">{sourceInShort(row.reference)}</span>
          </td>
        </tr>
      ))}
    </Ledger>
  );
}
