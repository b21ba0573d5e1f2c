import { useQuery, useQueryClient } from '@tanstack/react-query';
import { useOnceKey } from '../item/use-once-key.ts';
import { forWhich } from '../organisation/for-which.ts';
import { useTrying } from '../organisation/use-trying.ts';
import { vesselNamesQuery } from '../rule/own-rule.query.ts';
import { strings } from '../strings/share.ts';
import { formatDay, formatInstant } from '../ui/calendar.ts';
import { revokeShareLink, type ShareLink } from './share.query.ts';

const { columns } = strings;

export function ShareLine({ link, onTold }: { link: ShareLink; onTold: (words: string) => void }) {
  const { data: vessels = [] } = useQuery(vesselNamesQuery());
  const { label, vesselIds, showsValue, revokedAt, views, lastViewedAt } = link;
  return (
    <tr>
      <th scope="row">
        <span className="row-name">{label}</span>
      </th>
      <td data-of={columns.shows}>
        {forWhich(vesselIds, vessels)}
        {showsValue && <span className="sub">{strings.worth}</span>}
      </td>
      <td data-of={columns.until}>{untilInWords(link)}</td>
      <td data-of={columns.looks}>
        {lastViewedAt ? strings.looks(views, formatInstant(Date.parse(lastViewedAt))) : strings.never}
      </td>
      <td>{!revokedAt && <Revoke link={link} onTold={onTold} />}</td>
    </tr>
  );
}

function untilInWords({ revokedAt, expiresAt }: ShareLink): string {
  if (revokedAt) return strings.revoked(formatDay(revokedAt.slice(0, 10)));
  const day = formatDay(expiresAt.slice(0, 10));
  return Date.parse(expiresAt) <= Date.now() ? strings.over(day) : day;
}

function Revoke({ link, onTold }: { link: ShareLink; onTold: (words: string) => void }) {
  const queries = useQueryClient();
  const keyFor = useOnceKey();
  const { trying, fault, busy } = useTrying();
  const revoke = () =>
    trying(async () => {
      await revokeShareLink(link, keyFor(link.version));
      onTold(strings.isRevoked(link.label));
      await queries.invalidateQueries({ queryKey: ['share-links'] });
    });
  return (
    <>
      <button type="button" aria-label={strings.revokeOf(link.label)} disabled={busy} onClick={revoke}>
        {strings.revoke}
      </button>
      <span role="alert">{fault}</span>
    </>
  );
}
