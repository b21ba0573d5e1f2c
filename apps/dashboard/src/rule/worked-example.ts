/** An invented thing aboard, on which a rule can be watched at work: a request to explain, made of what the rule reads. */
import type { components } from '@garboard/client/generated/api.d.ts';
import { addMonths } from '../ui/calendar.ts';

export type Rule = components['schemas']['Rule'];
type ExplainRequest = components['schemas']['ExplainRequest'];
type Fact = Omit<ExplainRequest['facts'][number], 'outcome'>;
/** A request to explain, with what the API fills in itself left out. */
export type WorkedExample = Pick<ExplainRequest, 'kind' | 'schemes' | 'attributes'> & {
  readonly facts: Fact[];
  readonly events?: ExplainRequest['events'];
  readonly asOf: string;
  /** The rule itself, where no published one would be found. */
  readonly ownRules?: ExplainRequest['ownRules'];
};
type Reset = Rule['duties'][number]['resets'][number];
type EventCode = Rule['reads']['events'][number];

/** What can stand in a diary; the rest of what a rule reads of events only ever has happened. */
const PLANNED: readonly EventCode[] = ['inspection', 'haul_out', 'liferaft_service', 'race_start'];

/** `null` where it would not be natural: a rule without duties, or one that goes by a meter. */
export function workedExample(rule: Rule, today: string): WorkedExample | null {
  const [kind] = rule.kinds;
  if (kind === undefined || rule.duties.length === 0 || rule.reads.facts.includes('meter')) return null;
  const attributes = figures(rule);
  const events = rule.reads.events
    .filter((event) => PLANNED.includes(event))
    .map((event) => ({ event, on: addMonths(today, 5), planned: true }));
  return {
    kind,
    schemes: [rule.scheme],
    ...(Object.keys(attributes).length > 0 && { attributes }),
    facts: [...dated(rule, today), ...done(rule, kind, today)],
    ...(events.length > 0 && { events }),
    asOf: today,
    ...(rule.ownRule && { ownRules: stated(rule.id, rule.ownRule) }),
  };
}

/** The version that the page tells: the one that counts, else the last that lays something down. */
function stated(id: string, { inForce, versions }: NonNullable<Rule['ownRule']>): ExplainRequest['ownRules'] {
  const laid = versions.filter(({ laysDown }) => laysDown);
  const { laysDown, takesEffectOn, decidedBy, reason, document } =
    laid.find(({ number }) => number === inForce) ?? laid.at(-1) ?? {};
  if (!laysDown || !takesEffectOn || !decidedBy || !reason || !document) return [];
  const { vessels: _, ...text } = laysDown;
  return [{ id, ...text, takesEffectOn, decidedBy, reason, document }];
}

/** Made and fitted three years ago, its print good for another fourteen months. */
function dated({ reads }: Rule, today: string): Fact[] {
  return [
    ...(reads.facts.includes('manufactured')
      ? [{ fact: 'manufactured', on: addMonths(today, -40).slice(0, 7), evidence: 'stamped' } as const]
      : []),
    ...(reads.facts.includes('installed')
      ? [{ fact: 'installed', on: addMonths(today, -36), evidence: 'record' } as const]
      : []),
    ...(reads.facts.includes('printed_expiry')
      ? [{ fact: 'printed_expiry', on: addMonths(today, 14).slice(0, 7), evidence: 'printed' } as const]
      : []),
  ];
}

/** Each duty's own act, once, seven months ago. What is dated anyway was not replaced since. */
function done({ duties, reads }: Rule, kind: string, today: string): Fact[] {
  const isDated = reads.facts.some((fact) => ['manufactured', 'installed', 'printed_expiry'].includes(fact));
  const acts = duties
    .filter(({ onlyFor }) => !onlyFor || onlyFor.includes(kind))
    .flatMap(({ resets }) => resets.slice(0, 1))
    .filter(({ act }) => !(act === 'replaced' && isDated));
  const facts = acts.map((reset) => act(reset, addMonths(today, -7)));
  return [...new Map(facts.map((fact) => [JSON.stringify(fact), fact])).values()];
}

function act({ act: fact, tests, by }: Reset, on: string): Fact {
  const [[test], [capacity]] = [tests ?? [], by];
  return { fact, on, ...(test && { test }), ...(capacity && { doneBy: { capacity } }), evidence: 'record' };
}

/** A figure of the maker's or insurer's own, where the rule asks for one. */
function figures({ reads }: Rule): Record<string, number> {
  const months = reads.attributes.filter(({ is }) => is === 'months');
  return Object.fromEntries(
    months.flatMap(({ name }) => {
      if (name.endsWith('IntervalMonths')) return [[name, 24]];
      return name.endsWith('LifeMonths') ? [[name, 120]] : [];
    }),
  );
}
