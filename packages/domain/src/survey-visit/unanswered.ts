/**
 * What a visit has not answered yet: every place of its route, every open finding and every limitation that is not
 * lifted. Nothing that the last visit left open can be passed over in silence.
 */
import type { Zone } from './zones.ts';

export type ToAnswer = { readonly id: string; readonly zone: string; readonly words: string };

export type VisitState = {
  readonly route: readonly Pick<Zone, 'zone' | 'name'>[];
  /** Places that have an answer of this visit. */
  readonly answeredZones: readonly string[];
  readonly openFindings: readonly ToAnswer[];
  /** Findings of which this visit has said something. */
  readonly answeredFindings: readonly string[];
  readonly limitations: readonly ToAnswer[];
  readonly answeredLimitations: readonly string[];
};

export type Unanswered = {
  readonly what: 'zone' | 'finding' | 'limitation';
  /** Of the finding or limitation; the place's own code for a place. */
  readonly id: string;
  readonly zone: string;
  readonly words: string;
};

/** In the order of the route; what lies off the route comes last. */
export function unanswered(state: VisitState): Unanswered[] {
  const zones = state.route
    .filter(({ zone }) => !state.answeredZones.includes(zone))
    .map(({ zone, name }) => ({ what: 'zone' as const, id: zone, zone, words: name }));
  const findings = left('finding', state.openFindings, state.answeredFindings);
  const limitations = left('limitation', state.limitations, state.answeredLimitations);
  const order = state.route.map(({ zone }) => zone);
  const place = ({ zone }: Unanswered) => (order.includes(zone) ? order.indexOf(zone) : order.length);
  return [...zones, ...findings, ...limitations].toSorted((a, b) => place(a) - place(b));
}

function left(what: 'finding' | 'limitation', all: readonly ToAnswer[], answered: readonly string[]): Unanswered[] {
  return all.filter(({ id }) => !answered.includes(id)).map((each) => ({ what, ...each }));
}
