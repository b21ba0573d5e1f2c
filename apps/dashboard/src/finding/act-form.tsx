/** The form of one act. Somebody else's words, written meanwhile, are shown; what was typed is kept, and one choice settles it. */

import { isStatus } from '@garboard/client/api-problem.ts';
import { useQuery, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { readAnew } from '../api/read-anew.ts';
import { useOnceKey } from '../item/use-once-key.ts';
import { strings } from '../strings/finding.ts';
import { formFaults } from '../ui/form-faults.ts';
import { type FormFault, QuickForm, type Typed } from '../ui/quick-form.tsx';
import type { Act } from './act.ts';
import { boxesOf } from './act-boxes.ts';
import { type Finding, findingQuery, send, storyQuery } from './finding.query.ts';
import { saidOf } from './said-of.ts';
import { StoryEntry } from './story.tsx';

const { one, acts, boxes } = strings;

type Props = { act: Act; finding: Finding; version: string; onDone: () => void };

export function ActForm({ act, finding, version, onDone }: Props) {
  const { id } = finding;
  /** As it stood when the form was opened: whatever came later is somebody else's. */
  const [opened] = useState({ finding, boxes: boxesOf(act, finding) });
  const [against, setAgainst] = useState(version);
  const known = useQuery(storyQuery(id)).data ?? [];
  const [seen, setSeen] = useState<number>();
  const queries = useQueryClient();
  const keyFor = useOnceKey();
  const submit = async (typed: Typed): Promise<readonly FormFault[] | null> => {
    const read = saidOf(act, typed, opened.finding);
    if (!read.ok) return read.faults;
    try {
      await send(id, read.value, against, keyFor([read.value, against]));
      await readAnew(queries);
      onDone();
      return null;
    } catch (error) {
      if (!isStatus(error, 412))
        return faultsOf(
          error,
          opened.boxes.map(({ key }) => key),
        );
      setSeen((now) => now ?? known.length);
      const [fresh] = await Promise.all([
        queries.fetchQuery({ ...findingQuery(id), staleTime: 0 }),
        queries.invalidateQueries({ queryKey: ['finding', id] }),
      ]);
      setAgainst(fresh.version);
      return [];
    }
  };
  const theirs = seen === undefined ? [] : known.slice(seen);
  return (
    <section className="act-form" aria-label={acts[act]}>
      <h3>{acts[act]}</h3>
      {seen !== undefined && (
        <div className="meanwhile" role="alert">
          <h4>{one.changed}</h4>
          <p>{one.changedHow}</p>
          <ol className="story">
            {theirs.map((entry) => (
              <StoryEntry key={entry.id} entry={entry} />
            ))}
          </ol>
        </div>
      )}
      <QuickForm
        id={act}
        boxes={opened.boxes}
        submit={seen === undefined ? boxes.send : one.alsoSend}
        onSubmit={submit}
      >
        <button type="button" onClick={onDone}>
          {one.leave}
        </button>
      </QuickForm>
    </section>
  );
}

/** The API's pointers name its own properties; some boxes stand for several of them. */
const BOX_OF: Readonly<Record<string, string>> = { doneBy: 'name', facts: 'fact', estimate: 'estimate' };

function faultsOf(error: unknown, keys: readonly string[]): FormFault[] {
  return formFaults(error).map(({ at, words }) => {
    const head = at?.split('/')[0] ?? '';
    const key = keys.includes(head) ? head : BOX_OF[head];
    return key === undefined ? { words } : { at: key, words };
  });
}
