/** What can be done with the rows chosen: one form, one answer for each, one undo. */
import { useState } from 'react';
import { strings } from '../strings/bulk.ts';
import { BulkForm } from './bulk-form.tsx';
import { BulkOutcome } from './bulk-outcome.tsx';
import { type Choosing, thingsChosen } from './choosing.ts';
import type { BulkResult } from './record-bulk.ts';
import './bulk.css';

export function Bulk({ choosing }: { choosing: Choosing }) {
  const [open, setOpen] = useState(false);
  const [result, setResult] = useState<BulkResult | null>(null);
  const things = thingsChosen(choosing);
  const recorded = (next: BulkResult) => {
    setOpen(false);
    setResult(next);
    choosing.clear();
  };
  return (
    <>
      <div role="status" className="out-of-sight">
        {things.length > 0 && strings.chosen(things.length)}
      </div>
      {result && <BulkOutcome result={result} onDone={() => setResult(null)} />}
      {things.length > 0 && (
        <div className="bulk-bar">
          <span>{strings.chosen(things.length)}</span>
          <button type="button" className="first" onClick={() => setOpen(true)}>
            {strings.record(things.length)}
          </button>
          <button type="button" onClick={choosing.clear}>
            {strings.clear}
          </button>
        </div>
      )}
      {open && <BulkForm things={things} onRecorded={recorded} onClose={() => setOpen(false)} />}
    </>
  );
}
