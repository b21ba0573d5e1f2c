import { Link } from '@tanstack/react-router';
import { useMay } from '../organisation/may.ts';
import { strings } from '../strings/audit.ts';

/** From a vessel's page to what was changed there, for whoever may read it. */
export function ChangesLink({ vesselId }: { vesselId: string }) {
  if (!useMay().readAudit) return null;
  return (
    <p className="changes-link">
      <Link to="/changes" search={{ vessel: vesselId }}>
        {strings.here}
      </Link>
    </p>
  );
}
