import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { forWhich } from '../organisation/for-which.ts';
import { vesselNamesQuery } from '../rule/own-rule.query.ts';
import { permissionWords, strings } from '../strings/api-key.ts';
import { roleNames } from '../strings/people.ts';
import { formatDay, formatInstant } from '../ui/calendar.ts';
import { inAList } from '../ui/number-words.ts';
import type { ApiKey, WithText } from './api-key.query.ts';
import { RenewForm } from './renew-form.tsx';
import { RevokeForm } from './revoke-form.tsx';

const { columns } = strings;
type Props = { apiKey: ApiKey; onShown: (key: WithText) => void; onTold: (words: string) => void };

export function KeyLine({ apiKey, onShown, onTold }: Props) {
  const [doing, setDoing] = useState<'renew' | 'revoke'>();
  const { name, endsWith, revokedAt, lastUsedAt } = apiKey;
  const leave = () => setDoing(undefined);
  return (
    <>
      <tr className={isOver(apiKey) ? 'over' : undefined}>
        <th scope="row">
          <span className="row-name">{name}</span>
          <span className="sub">{endsWith ? strings.ends(endsWith) : strings.atTheMachine}</span>
        </th>
        <td data-of={columns.may}>
          <May apiKey={apiKey} />
        </td>
        <td data-of={columns.until}>
          <Until apiKey={apiKey} />
        </td>
        <td data-of={columns.used}>{lastUsedAt ? formatInstant(Date.parse(lastUsedAt)) : strings.never}</td>
        <td>
          {!revokedAt && !doing && (
            <span className="acts">
              <button type="button" aria-label={strings.renewOf(name)} onClick={() => setDoing('renew')}>
                {strings.renew}
              </button>
              <button type="button" aria-label={strings.revokeOf(name)} onClick={() => setDoing('revoke')}>
                {strings.revoke}
              </button>
            </span>
          )}
        </td>
      </tr>
      {doing && (
        <tr>
          <td colSpan={5} className="key-act">
            {doing === 'renew' ? (
              <RenewForm apiKey={apiKey} onShown={onShown} onLeave={leave} />
            ) : (
              <RevokeForm apiKey={apiKey} onTold={onTold} onLeave={leave} />
            )}
          </td>
        </tr>
      )}
    </>
  );
}

const isOver = ({ revokedAt, expiresAt }: ApiKey) => revokedAt !== undefined || Date.parse(expiresAt) <= Date.now();

function May({ apiKey: { role, permissions, vesselIds } }: { apiKey: ApiKey }) {
  const { data: vessels = [] } = useQuery(vesselNamesQuery());
  return (
    <>
      {roleNames[role]}
      {permissions && (
        <span className="sub">{strings.only(inAList(permissions.map((each) => permissionWords[each])))}</span>
      )}
      {vesselIds && <span className="sub">{strings.for(forWhich(vesselIds, vessels))}</span>}
    </>
  );
}

function Until({ apiKey: { revokedAt, expiresAt, previousUntil } }: { apiKey: ApiKey }) {
  const day = (instant: string) => formatDay(instant.slice(0, 10));
  if (revokedAt) return strings.revoked(day(revokedAt));
  if (Date.parse(expiresAt) <= Date.now()) return strings.over(day(expiresAt));
  const both = previousUntil !== undefined && Date.parse(previousUntil) > Date.now();
  return (
    <>
      {day(expiresAt)}
      {both && <span className="sub">{strings.both(formatInstant(Date.parse(previousUntil)))}</span>}
    </>
  );
}
