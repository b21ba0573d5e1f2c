/**
 * What a rule looks at, worked out from its own shape: each part of a duty has one entry here, so a new
 * part without one does not compile.
 */
import type { AttributeId } from '../item/attribute.ts';
import type { FactKind, TestKind } from '../item/fact.ts';
import type { SituationPart, VesselEventKind } from '../vessel/situation.ts';
import type { CertificateTerms } from './certificate-terms.ts';
import type { Applies, Check, Condition, Duty, Interval, Limit, Reset, Rule, Start } from './rule.ts';

export type RuleReads = {
  readonly facts: readonly FactKind[];
  readonly tests: readonly TestKind[];
  readonly attributes: readonly AttributeId[];
  readonly events: readonly VesselEventKind[];
  readonly situations: readonly SituationPart[];
};

/** The facts, tests, attributes and events that the rule reads, each once, in alphabetical order. */
export function ruleReads(rule: Rule): RuleReads {
  return merge([
    ...(rule.appliesWhen ?? []).map(({ condition }: Applies) => readsOfCondition(condition)),
    ...rule.duties.map(dutyReads),
    ...rule.checks.map(readsOfCheck),
    reads(rule.suspends ? { situations: ['dismantled', 'use'] } : {}),
  ]);
}

/** The same of one duty. */
export function dutyReads(duty: Duty): RuleReads {
  const parts = Object.keys(duty) as (keyof Duty)[];
  return merge(parts.map((part) => readsOfPart(part, duty)));
}

type PartReaders = { readonly [Part in keyof Duty]-?: (part: NonNullable<Duty[Part]>) => RuleReads };

const PARTS: PartReaders = {
  id: () => NOTHING,
  action: () => NOTHING,
  inWords: () => NOTHING,
  onlyFor: () => NOTHING,
  appliesWhen: (conditions) => merge(conditions.map(({ condition }) => readsOfCondition(condition))),
  limits: (limits) => merge(limits.map(readsOfLimit)),
  cappedBy: (limits) => merge(limits.map(readsOfLimit)),
  noLaterThan: (limits) => merge(limits.map(readsOfLimit)),
  fallback: (limits) => merge(limits.map(readsOfLimit)),
  begins: ({ from, plus }) => merge([readsOfStart(from), readsOfInterval(plus)]),
  window: () => NOTHING,
  extension: (extension) => {
    switch (extension.kind) {
      case 'authority_record':
        return reads({ facts: ['extended'] });
      case 'next_event':
        return reads({ facts: ['extended'], events: [extension.event] });
    }
  },
  expires: () => NOTHING,
  replaceBy: ({ event }) => reads({ events: [event] }),
  suspectFromAge: () => reads({ facts: ['manufactured'] }),
  resets: (resets) => merge(resets.map(readsOfReset)),
};

function readsOfPart<Part extends keyof Duty>(part: Part, duty: Duty): RuleReads {
  const value = duty[part];
  return value === undefined ? NOTHING : (PARTS[part] as (value: Duty[Part]) => RuleReads)(value);
}

function readsOfLimit(limit: Limit): RuleReads {
  switch (limit.kind) {
    case 'after':
      return merge([readsOfStart(limit.from), readsOfInterval(limit.plus)]);
    case 'printed':
      return reads({ facts: ['printed_expiry'], tests: limit.renewedBy ? [limit.renewedBy] : [] });
    case 'given':
      return reads({ attributes: [limit.attribute] });
    case 'next_event':
    case 'before_event':
      return reads({ events: [limit.event] });
    case 'certificate_expiry':
    case 'one_of_anniversaries':
    case 'once_in_certificate':
      return readsOfTerms(limit.terms);
    case 'anniversary':
      return merge([readsOfTerms(limit.terms), reads(limit.endorsed ? { attributes: [limit.endorsed] } : {})]);
    case 'given_anniversary':
      return reads({ attributes: [limit.attribute] });
    case 'running_hours':
      return reads({ facts: ['meter'], attributes: 'hours' in limit ? [] : [limit.attribute] });
    case 'triggered':
      return reads({ facts: limit.facts, events: limit.events });
    case 'deadline_set':
      return NOTHING;
  }
}

function readsOfTerms({ begunBy, renewedBy, runs }: CertificateTerms): RuleReads {
  const setting = runs?.fromSurvey === 'as_issuer_sets';
  return merge([
    ...[...begunBy, ...renewedBy].map(readsOfReset),
    reads({ facts: ['printed_expiry'], attributes: setting ? ['expiryLessOneDay'] : [] }),
  ]);
}

function readsOfCheck(check: Check): RuleReads {
  switch (check.kind) {
    case 'stamp_not_after':
      return reads({ facts: ['manufactured', 'printed_expiry'] });
    case 'no_date':
      return NOTHING;
  }
}

/** What `last_done` and `first_failed` read is in the duty's resets. */
function readsOfStart(from: Start): RuleReads {
  switch (from) {
    case 'manufactured':
      return reads({ facts: ['manufactured'] });
    case 'installed':
      return reads({ facts: ['installed', 'replaced'] });
    case 'last_done':
    case 'first_failed':
      return NOTHING;
  }
}

function readsOfInterval(interval: Interval): RuleReads {
  switch (interval.kind) {
    case 'fixed':
      return NOTHING;
    case 'own_figure':
      return reads({ attributes: [interval.attribute] });
    case 'by_condition':
      return merge(interval.options.flatMap((option) => option.all.map(readsOfCondition)));
    case 'by_age':
      return reads({ facts: ['manufactured'] });
  }
}

function readsOfCondition(condition: Condition): RuleReads {
  switch (condition.kind) {
    case 'kind_is':
      return NOTHING;
    case 'attribute_is':
    case 'attribute_below':
    case 'valid_through_next':
      return reads({ attributes: [condition.attribute] });
    case 'younger_than':
      return reads({ facts: ['manufactured'] });
  }
}

function readsOfReset({ act, tests }: Reset): RuleReads {
  return reads({ facts: [act], tests: tests ?? [] });
}

const NOTHING: RuleReads = { facts: [], tests: [], attributes: [], events: [], situations: [] };

function reads(some: Partial<RuleReads>): RuleReads {
  return { ...NOTHING, ...some };
}

function merge(all: readonly RuleReads[]): RuleReads {
  return {
    facts: once(all.flatMap((one) => one.facts)),
    tests: once(all.flatMap((one) => one.tests)),
    attributes: once(all.flatMap((one) => one.attributes)),
    events: once(all.flatMap((one) => one.events)),
    situations: once(all.flatMap((one) => one.situations)),
  };
}

function once<Name extends string>(names: readonly Name[]): readonly Name[] {
  return [...new Set(names)].sort();
}
