/** The remedy's states and steps as a picture in docs/findings.md, drawn from the one table. */
import { isOpen, NEXT, STATES } from '@garboard/domain/finding/next-state.ts';

const BEGIN = '<!-- drawn by npm run finding-picture -->';
const END = '<!-- end -->';

/** The page with its picture drawn anew between the two marks. */
export function withPicture(page: string): string {
  const [before, rest = ''] = page.split(BEGIN);
  return `${before}${BEGIN}\n${picture()}\n${END}${rest.split(END)[1] ?? ''}`;
}

/** Steps that lead from one state to one other are written on one arrow. A step that leaves it where it is has none. */
function picture(): string {
  const arrows = STATES.flatMap((state) => {
    const moves = Object.entries(NEXT[state]).filter(([, next]) => next !== state);
    const byNext = Map.groupBy(moves, ([, next]) => next);
    return [...byNext].map(([next, some]) => `  ${state} --> ${next}: ${some.map(([move]) => words(move)).join(', ')}`);
  });
  const ends = STATES.filter((state) => !isOpen(state)).map((state) => `  ${state} --> [*]`);
  return ['```mermaid', 'stateDiagram-v2', '  [*] --> found', ...arrows, ...ends, '```'].join('\n');
}

const words = (move: string) => move.replaceAll('_', ' ');
