/** What became of each, and the one undo. It stays until it is put away. */

import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useEffect, useRef, useState } from 'react';
import { readAnew } from '../api/read-anew.ts';
import { whyItFailed } from '../api/why-it-failed.ts';
import { useOnceKey } from '../item/use-once-key.ts';
import { strings } from '../strings/bulk.ts';
import { Day } from '../ui/day.tsx';
import { type BulkResult, type BulkRow, recordedIn, undoBulk } from './record-bulk.ts';

export function BulkOutcome({ result, onDone }: { result: BulkResult; onDone: () => void }) {
  const [undone, setUndone] = useState<BulkResult | null>(null);
  const heading = useRef<HTMLHeadingElement>(null);
  const keyFor = useOnceKey();
  const queries = useQueryClient();
  const undo = useMutation({
    mutationFn: () => undoBulk(result, keyFor(recordedIn(result).map(({ outcome }) => outcome.fact.id))),
    onSuccess: (taken) => {
      setUndone(taken);
      void readAnew(queries);
    },
  });
  // biome-ignore lint/correctness/useExhaustiveDependencies: what came of it is told anew after the undo
  useEffect(() => heading.current?.focus(), [undone]);
  const recorded = recordedIn(undone ?? result).length;
  const refused = (undone ?? result).rows.length - recorded;
  return (
    <section className="bulk-outcome" aria-labelledby="bulk-outcome">
      <h3 id="bulk-outcome" tabIndex={-1} ref={heading}>
        {undone ? strings.undone(recorded, refused) : strings.outcome(recorded, refused)}
      </h3>
      <ul>
        {(undone ?? result).rows.map((each) => (
          <OutcomeLine key={each.row.item.id} {...each} undone={undone !== null} />
        ))}
      </ul>
      {undo.error && <p role="alert">{whyItFailed(undo.error)}</p>}
      <p className="acts">
        {!undone && recorded > 0 && (
          <button type="button" disabled={undo.isPending} onClick={() => undo.mutate()}>
            {strings.undo(recorded)}
          </button>
        )}
        <button type="button" onClick={onDone}>
          {strings.putAway}
        </button>
      </p>
    </section>
  );
}

function OutcomeLine({ row, outcome, undone }: BulkRow & { undone: boolean }) {
  const name = `${row.item.label}, ${row.vessel.name}`;
  if (outcome.result === 'refused') {
    const { errors, detail, title } = outcome.problem;
    return (
      <li>
        <strong>{strings.refused}</strong> {name}: {errors?.map((each) => each.detail).join('; ') ?? detail ?? title}
      </li>
    );
  }
  const next = outcome.dates.find(({ ruleId, duty }) => ruleId === row.ruleId && duty === row.duty);
  return (
    <li>
      {undone ? strings.takenBack : strings.recorded} {name}
      {next?.dueOn && (
        <>
          : {strings.nextDue} <Day on={next.dueOn} />
        </>
      )}
      {outcome.doubts.map((doubt) => (
        <span key={doubt} className="sub">
          {doubt}
        </span>
      ))}
    </li>
  );
}
