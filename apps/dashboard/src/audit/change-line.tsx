import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { strings, verbWords } from '../strings/audit.ts';
import { formatInstant } from '../ui/calendar.ts';
import type { Change } from './changes.query.ts';
import { differences } from './differences.ts';

const { columns } = strings;

export function ChangeLine({ change }: { change: Change }) {
  const [open, setOpen] = useState(false);
  const when = formatInstant(Date.parse(change.at));
  const what = verbWords[change.verb] ?? change.verb.replaceAll('_', ' ');
  return (
    <>
      <tr>
        <td data-of={columns.when}>{when}</td>
        <td data-of={columns.who}>
          {whoOf(change)}
          {change.role && <span className="sub">{strings.asRole(change.role)}</span>}
        </td>
        <td data-of={columns.what}>{what}</td>
        <td data-of={columns.about}>
          <About change={change} />
        </td>
        <td>
          <button
            type="button"
            className="word"
            aria-expanded={open}
            aria-label={strings.openOf(what, when)}
            onClick={() => setOpen(!open)}
          >
            {strings.open}
          </button>
        </td>
      </tr>
      {open && (
        <tr>
          <td colSpan={5} className="opened">
            <Opened change={change} />
          </td>
        </tr>
      )}
    </>
  );
}

function whoOf({ actor: { kind, name } }: Change): string {
  if (kind === 'upkeep') return strings.upkeep;
  if (!name) return strings.former;
  if (kind === 'share_link') return strings.outsider(name);
  return kind === 'api_key' ? strings.program(name) : name;
}

function About({ change: { about } }: { change: Change }) {
  const { vesselId, vesselName, itemLabel } = about;
  if (!vesselId) return strings.nothing;
  return (
    <>
      <Link to="/vessels/$vesselId" params={{ vesselId }}>
        {vesselName}
      </Link>
      {itemLabel && <span className="sub">{itemLabel}</span>}
    </>
  );
}

function Opened({ change }: { change: Change }) {
  const rows = differences(change.before, change.after);
  return (
    <>
      {rows.length === 0 ? <p>{strings.same}</p> : <Differences rows={rows} />}
      <p className="quiet">
        {strings.request} <code>{change.requestId}</code>,{' '}
        {change.sequence === undefined ? strings.unchained : strings.place(change.sequence)}
        {change.credential && <>, {change.credential.replace('_', ' ')}</>}
      </p>
    </>
  );
}

function Differences({ rows }: { rows: ReturnType<typeof differences> }) {
  return (
    <table className="differences">
      <thead>
        <tr>
          {[strings.property, strings.before, strings.after].map((column) => (
            <th key={column} scope="col">
              {column}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(({ property, before, after }) => (
          <tr key={property}>
            <th scope="row">{property}</th>
            <td>{before}</td>
            <td>{after}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
