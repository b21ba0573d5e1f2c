import { faultsOrDone } from '../ui/form-faults.ts';
import type { FormFault } from '../ui/quick-form.tsx';

/** For a form that is done where nothing is thrown: of the faults of a problem the first. */
export const faultOrDone = async (act: () => Promise<unknown>): Promise<FormFault | null> =>
  (await faultsOrDone(act))?.[0] ?? null;
