/** After the password: the code of the app, or a recovery code. */
import { doors } from '../strings/doors.ts';
import { QuickForm } from '../ui/quick-form.tsx';
import { faultOf, knock } from './door.ts';
import { Outside } from './outside.tsx';
import { useComeIn } from './use-come-in.ts';

const { second } = doors;

export function SecondStep({ onBack }: { onBack: () => void }) {
  const comeIn = useComeIn();
  const submit = async ({ code = '' }) => {
    const typed = code.trim();
    const isOfApp = /^\d{3} ?\d{3}$/.test(typed);
    const answered = isOfApp
      ? await knock('/two-factor/verify-totp', { code: typed.replace(' ', '') })
      : await knock('/two-factor/verify-backup-code', { code: typed });
    if (!answered.ok) return faultOf(answered.code);
    await comeIn();
    return null;
  };
  return (
    <Outside title={second.title} how={second.how}>
      <QuickForm
        id="second"
        submit={second.submit}
        onSubmit={submit}
        boxes={[{ key: 'code', name: second.code, fill: 'one-time-code' }]}
      >
        <button type="button" onClick={onBack}>
          {second.back}
        </button>
      </QuickForm>
    </Outside>
  );
}
