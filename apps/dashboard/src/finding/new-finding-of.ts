/** What was typed of a new finding, as the API takes it. */
import type { components } from '@garboard/client/generated/api.d.ts';
import type { Typed } from '../ui/quick-form.tsx';
import { type Read, Reader } from './said-of.ts';

type NewFinding = components['schemas']['NewFinding'];

export function newFindingOf(typed: Typed): Read<NewFinding> {
  const read = new Reader(typed);
  const urgency = read.text('urgency') as NewFinding['urgency'];
  return read.told({
    zone: read.text('zone'),
    what: read.text('what'),
    hazard: read.text('hazard') as NewFinding['hazard'],
    urgency,
    ...(urgency === 'within_weeks' && read.maybeDay('urgentBy')),
    ...(read.maybe('trade') as { trade?: NonNullable<NewFinding['trade']> }),
    ...read.maybe('itemId'),
    on: read.day('on'),
    ...read.estimate(),
    ...read.maybe('responsible'),
    evidence: read.evidence(),
  });
}
