import { account } from '../strings/account.ts';
import { QuickForm } from '../ui/quick-form.tsx';
import { eraseAccount } from './account.query.ts';
import { faultOrDone } from './problem-fault.ts';
import { useComeIn } from './use-come-in.ts';

const { erasure: words } = account;

/** Asked for twice on purpose: it cannot be undone. */
export function Erasure() {
  const comeIn = useComeIn();
  const erase = ({ email = '' }) =>
    faultOrDone(async () => {
      await eraseAccount(email);
      await comeIn();
    });
  return (
    <>
      <p>{words.how}</p>
      <details>
        <summary>{words.submit} …</summary>
        <QuickForm
          id="erasure"
          quiet
          submit={words.submit}
          onSubmit={erase}
          boxes={[{ key: 'email', name: words.email, kind: 'email' }]}
        />
      </details>
    </>
  );
}
