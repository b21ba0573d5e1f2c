/** One target on the horizon: the marks drawn there, the words for them, and the way to their reasoning. */
import { reasoningKey } from '../item/reasoning-key.ts';
import { statusWords } from '../item/source-words.ts';
import { formatDay } from '../ui/calendar.ts';
import type { FleetRow } from './fleet.query.ts';
import { countShown, kindsOf, type Mark, type Stack, type Target } from './horizon-marks.ts';
import type { Scale } from './horizon-scale.ts';
import { percent } from './percent.ts';

export function HorizonMark(props: {
  target: Target;
  row: FleetRow;
  scale: Scale;
  asAt: string | undefined;
  onTell: () => void;
  onLeave: () => void;
}) {
  const { target, row, scale, asAt } = props;
  const marks = target.stacks.flatMap((stack) => stack.marks);
  return (
    <a
      href={addressOf(row, { ...(asAt && { asAt }), ...whatToOpen(marks) })}
      className="horizon-target"
      style={{ left: percent(target.left, scale.width), width: `${target.width}px` }}
      aria-label={`${row.name}: ${marks.map(markInWords).join('; ')}`}
      tabIndex={-1}
      onPointerEnter={props.onTell}
      onFocus={props.onTell}
      onBlur={props.onLeave}
    >
      {target.stacks.map((stack) => (
        <StackOfMarks key={stack.x} stack={stack} left={stack.x - target.left} />
      ))}
    </a>
  );
}

function StackOfMarks({ stack, left }: { stack: Stack; left: number }) {
  const count = countShown(stack);
  return (
    <span className="stack" style={{ left: `${left}px` }}>
      {kindsOf(stack).map(({ kind, standing }) => (
        <i key={kind} className={`mark ${kind} ${standing}`} />
      ))}
      {count !== null && <b>{count}</b>}
    </span>
  );
}

function addressOf({ vesselId }: FleetRow, search: Record<string, string>): string {
  const asked = new URLSearchParams(search).toString();
  return asked ? `/vessels/${vesselId}?${asked}` : `/vessels/${vesselId}`;
}

/** A date is not shown without saying so where nobody read its figure in the text. */
const thingInWords = ({ label, words, status }: Mark['things'][number]) =>
  status === 'read' ? `${label}, ${words}` : `${label}, ${words} (${statusWords[status]})`;

function markInWords(mark: Mark): string {
  return `${formatDay(mark.on)}, ${mark.things.map(thingInWords).join(', ')}`;
}

/** A single thing opens its reasoning; several are picked out on the vessel's page by their days. */
function whatToOpen(marks: readonly Mark[]): { open?: string; from?: string; to?: string } {
  const [first] = marks;
  const last = marks.at(-1);
  if (!first || !last) return {};
  const [thing, ...others] = marks.flatMap((mark) => mark.things);
  if (thing && others.length === 0) return { open: reasoningKey(thing.itemId, thing.ruleId, thing.duty) };
  return { from: first.on, to: last.on };
}
