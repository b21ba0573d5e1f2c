import { form } from '../strings/form.ts';
import type { BoxFaults } from './box-faults.ts';
import { FaultSummary } from './fault-summary.tsx';

type Props = { id: string; names: Readonly<Record<string, string>>; faults: BoxFaults };

/** The faults of a form whose boxes have the ids `id-key`, by their names. */
export function BoxSummary({ id, names, faults }: Props) {
  return (
    <FaultSummary
      heading={form.notDone}
      why={form.notYetWhy}
      faults={Object.entries(faults.at).map(([key, fault]) => ({ id: `${id}-${key}`, name: names[key] ?? key, fault }))}
      others={faults.others}
    />
  );
}
