/** What a link in a letter offers; whoever has the address accepts it. */
import { isStatus } from '@garboard/client/api-problem.ts';
import { answer } from '@garboard/client/client.ts';
import type { components } from '@garboard/client/generated/api.d.ts';
import { useQuery } from '@tanstack/react-query';
import { getRouteApi, Link, useNavigate } from '@tanstack/react-router';
import { api } from '../api/client.ts';
import { whyItFailed } from '../api/why-it-failed.ts';
import { useOnceKey } from '../item/use-once-key.ts';
import { doors } from '../strings/doors.ts';
import { roleNames } from '../strings/people.ts';
import { formatInstant } from '../ui/calendar.ts';
import { Failed } from '../ui/failed.tsx';
import { QuickForm } from '../ui/quick-form.tsx';
import { Waiting } from '../ui/waiting.tsx';
import { signOut } from './account.query.ts';
import { Outside } from './outside.tsx';
import { faultOrDone } from './problem-fault.ts';
import { sessionQuery } from './session.query.ts';
import { SignInPage } from './sign-in-page.tsx';
import { useComeIn } from './use-come-in.ts';

const route = getRouteApi('/invitation/$token');
const { invitation: words } = doors;
type Preview = components['schemas']['InvitationPreview'];

export function InvitationPage() {
  const { token } = route.useParams();
  const { data, error, isPending, refetch } = useQuery({
    queryKey: ['invitation', token],
    queryFn: () => answer(api.POST('/v1/invitations/preview', { body: { token } })),
    retry: false,
  });
  const session = useQuery(sessionQuery());
  if (isPending || session.isPending) return <Waiting>{words.waiting}</Waiting>;
  if (isStatus(error, 404) || isStatus(error, 422)) return <Outside title={words.gone} how={words.goneHow} />;
  if (!data)
    return (
      <Outside title={words.failed}>
        <Failed what={words.failed} why={whyItFailed(error)} again={refetch} />
      </Outside>
    );
  const email = session.data?.person?.email;
  if (!email)
    return (
      <SignInPage
        title={words.title(data.organisation)}
        before={
          <>
            <Offer preview={data} /> {words.first}
          </>
        }
      />
    );
  return (
    <Outside title={words.title(data.organisation)} how={<Offer preview={data} />}>
      {email === data.email ? <Accept token={token} /> : <ForAnother email={email} />}
    </Outside>
  );
}

function Offer({ preview: { email, role, vesselIds, expiresAt } }: { preview: Preview }) {
  return (
    <>
      {words.how(email, roleNames[role])} {vesselIds && words.some(vesselIds.length)}{' '}
      {words.until(formatInstant(Date.parse(expiresAt)))}
    </>
  );
}

function Accept({ token }: { token: string }) {
  const keyFor = useOnceKey();
  const comeIn = useComeIn();
  const navigate = useNavigate();
  const accept = () =>
    faultOrDone(async () => {
      const header = { 'Idempotency-Key': keyFor(token) };
      await answer(api.POST('/v1/invitations/acceptance', { params: { header }, body: { token } }));
      await navigate({ to: '/' });
      await comeIn();
    });
  return <QuickForm id="accept" submit={words.accept} onSubmit={accept} boxes={[]} />;
}

function ForAnother({ email }: { email: string }) {
  const comeIn = useComeIn();
  return (
    <>
      <p>{words.other(email)}</p>
      <p className="acts">
        <button type="button" className="first" onClick={() => signOut().then(comeIn)}>
          {words.signOut}
        </button>
        <Link to="/" className="button">
          {words.back}
        </Link>
      </p>
    </>
  );
}
