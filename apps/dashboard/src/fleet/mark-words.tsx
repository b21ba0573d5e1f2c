import type { CSSProperties } from 'react';
import { statusWords } from '../item/source-words.ts';
import { strings } from '../strings/fleet.ts';
import { Day } from '../ui/day.tsx';
import type { Target } from './horizon-marks.ts';
import { percent } from './percent.ts';

const SHOWN = 7;

/** What the marks under the pointer stand for. The same words are the link's name, so a screen reader is not told twice. */
export function MarkWords({ target, width }: { target: Target; width: number }) {
  const marks = target.stacks.flatMap((stack) => stack.marks);
  const lines = marks.flatMap((mark) => mark.things.map((thing) => ({ on: mark.on, ...thing })));
  // Past the middle it hangs to the left of its mark, so that it stays on the page.
  const place =
    target.left > width / 2
      ? { '--right': percent(width - target.left - target.width, width) }
      : { '--left': percent(target.left, width) };
  return (
    <div className="mark-words" style={place as CSSProperties} aria-hidden="true">
      {lines.slice(0, SHOWN).map((line) => (
        <p key={`${line.on} ${line.itemId} ${line.ruleId} ${line.words}`}>
          <Day on={line.on} /> <span>{line.label}</span>{' '}
          <span className="quiet">
            {line.words}
            {line.status !== 'read' && ` (${statusWords[line.status]})`}
          </span>
        </p>
      ))}
      {lines.length > SHOWN && <p className="quiet">{strings.more(lines.length - SHOWN)}</p>}
    </div>
  );
}
