/** A finding as it was found beside how it was after the work, where both were photographed. */
import type { FindingEntry } from '../finding/finding.query.ts';
import { strings } from '../strings/evidence.ts';
import { formatDay } from '../ui/calendar.ts';
import { PictureLink } from './picture.tsx';

type Shown = { readonly id: string; readonly words: string; readonly on: string };

export function BeforeAfter({ entries }: { entries: readonly FindingEntry[] }) {
  const before = lastShown(entries, ['found', 'seen']);
  const after = lastShown(entries, ['reported_done', 'verified']);
  if (!before || !after) return null;
  return (
    <section aria-labelledby="before-after">
      <h2 id="before-after">{strings.pair.title}</h2>
      <ul className="pictures pair">
        {[
          { name: strings.pair.before, shown: before },
          { name: strings.pair.after, shown: after },
        ].map(({ name, shown }) => (
          <li key={name}>
            <figure className="file">
              <PictureLink id={shown.id} words={`${name}: ${shown.words}`} />
              <figcaption>
                <strong>{name}</strong> <time dateTime={shown.on}>{formatDay(shown.on)}</time>
              </figcaption>
            </figure>
          </li>
        ))}
      </ul>
    </section>
  );
}

function lastShown(entries: readonly FindingEntry[], steps: readonly string[]): Shown | undefined {
  return entries
    .filter(({ step }) => steps.includes(step))
    .flatMap(({ on, evidence }) =>
      evidence.flatMap(({ kind, evidenceId: id, words }) => (id && kind === 'photograph' ? [{ id, words, on }] : [])),
    )
    .at(-1);
}
