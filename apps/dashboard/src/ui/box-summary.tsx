import { doors, people as words } from '../strings/people.ts';
import { FaultSummary } from '../ui/fault-summary.tsx';
import type { GrantFaults } from './grant-faults.ts';

const NAMES: Readonly<Record<string, string>> = {
  email: doors.email,
  role: words.role,
  vesselIds: words.narrow,
  reason: words.reason,
};

export function GrantSummary({ id, faults }: { id: string; faults: GrantFaults }) {
  return (
    <FaultSummary
      heading={words.notDone}
      why={doors.notYetWhy}
      faults={Object.entries(faults.at).map(([key, fault]) => ({ id: `${id}-${key}`, name: NAMES[key] ?? key, fault }))}
      others={faults.others}
    />
  );
}
