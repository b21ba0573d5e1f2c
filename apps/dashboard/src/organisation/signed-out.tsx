import { strings } from '../strings/frame.ts';
import { PageHeader } from '../ui/page-header.tsx';

export function SignedOut() {
  return (
    <main className="signed-out">
      <div className="scale-bar" aria-hidden="true" />
      <PageHeader title={strings.signedOut.title}>
        <p>{strings.signedOut.how}</p>
      </PageHeader>
      <p className="quiet narrow">{strings.signedOut.where}</p>
      <p className="foot quiet">{strings.caution}</p>
    </main>
  );
}
