import { Link } from '@tanstack/react-router';
import { strings } from '../strings/frame.ts';
import { PageHeader } from '../ui/page-header.tsx';

export function NotHere() {
  return (
    <>
      <PageHeader title={strings.notHere}>
        <p>{strings.notHereWhy}</p>
      </PageHeader>
      <Link to="/" className="button">
        {strings.toFleet}
      </Link>
    </>
  );
}
