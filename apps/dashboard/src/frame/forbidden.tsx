/** A page that somebody's role does not open: it says which roles could, and where to go instead. */
import { Link } from '@tanstack/react-router';
import { type May, rolesThatMay } from '../organisation/may.ts';
import { roleWords, strings } from '../strings/frame.ts';
import { inAList } from '../ui/number-words.ts';
import { PageHeader } from '../ui/page-header.tsx';

export function Forbidden({ permission }: { permission: keyof May }) {
  const roles = rolesThatMay(permission).map((role) => roleWords[role]);
  return (
    <>
      <PageHeader title={strings.forbidden.title}>
        <p>{strings.forbidden.why(inAList(roles))}</p>
      </PageHeader>
      <Link to="/" className="button">
        {strings.toFleet}
      </Link>
    </>
  );
}
