/** The link of the letter. A press, so that no program that opens links in letters uses it up. */
import { getRouteApi, useNavigate } from '@tanstack/react-router';
import { doors } from '../strings/doors.ts';
import { QuickForm } from '../ui/quick-form.tsx';
import { faultOf, knock } from './door.ts';
import { Outside } from './outside.tsx';
import { useComeIn } from './use-come-in.ts';

const route = getRouteApi('/verify/$token');
const { verify } = doors;

export function VerifyPage() {
  const { token } = route.useParams();
  const comeIn = useComeIn();
  const navigate = useNavigate();
  const submit = async () => {
    const answered = await knock(`/verify-email?token=${encodeURIComponent(token)}`);
    if (!answered.ok) return faultOf(answered.code);
    await comeIn();
    await navigate({ to: '/' });
    return null;
  };
  return (
    <Outside title={verify.title} how={verify.how}>
      <QuickForm id="verify" submit={verify.submit} onSubmit={submit} boxes={[]} />
      <p className="quiet narrow">{verify.overHow}</p>
    </Outside>
  );
}
