import { useState } from 'react';
import { whyItFailed } from '../api/why-it-failed.ts';

/** For a single press: what went wrong is said beside it. */
export function useTrying() {
  const [fault, setFault] = useState<string>();
  const [busy, setBusy] = useState(false);
  const trying = async (act: () => Promise<unknown>) => {
    setBusy(true);
    try {
      await act();
      setFault(undefined);
    } catch (error) {
      setFault(whyItFailed(error));
    } finally {
      setBusy(false);
    }
  };
  return { trying, fault, busy };
}
