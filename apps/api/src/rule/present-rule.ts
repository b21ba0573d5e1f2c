/** The catalogue as the API shows it. */
import type { Attribute, ItemKind, Rule, Scheme } from '@garboard/contract/rule/rule.ts';
import { ATTRIBUTES, type AttributeId, type AttributeType } from '@garboard/domain/item/attribute.ts';
import { FACT_KINDS } from '@garboard/domain/item/fact.ts';
import type * as kinds from '@garboard/domain/item/item-kind.ts';
import { appliesInWords, dutyInWords } from '@garboard/domain/rule/duty-in-words.ts';
import type * as domain from '@garboard/domain/rule/rule.ts';
import { ruleReads } from '@garboard/domain/rule/rule-reads.ts';
import type * as schemes from '@garboard/domain/rule/scheme.ts';
import { whileNotRecorded } from '@garboard/domain/rule/while-not-recorded.ts';
import { presentSource } from '../item/present-obligation.ts';
import { presentMeanings } from './present-meanings.ts';

export function presentRule(rule: domain.Rule): Rule {
  const reads = ruleReads(rule);
  return {
    id: rule.id,
    scheme: rule.scheme,
    weight: rule.weight,
    kinds: [...rule.kinds],
    inWords: rule.inWords,
    source: presentSource(rule.source),
    duties: rule.duties.map(presentDuty),
    own: false,
    checks: rule.checks.map(({ inWords }) => ({ inWords })),
    alsoAsks: [...(rule.alsoAsks ?? [])],
    appliesWhen: (rule.appliesWhen ?? []).map(appliesInWords),
    whileNotRecorded: [...whileNotRecorded(rule)],
    reads: {
      facts: [...reads.facts],
      tests: [...reads.tests],
      attributes: reads.attributes.map(presentAttribute),
      events: [...reads.events],
      situations: [...reads.situations],
      meanings: presentMeanings(reads, rule),
    },
  };
}

function presentDuty(duty: domain.Duty): Rule['duties'][number] {
  const { id, action, inWords, onlyFor, resets } = duty;
  return {
    id,
    action: { kind: action.kind, words: action.words },
    inWords,
    ...(onlyFor && { onlyFor: [...onlyFor] }),
    details: [...dutyInWords(duty)],
    resets: resets.map(({ act, tests, by }) => ({ act, ...(tests && { tests: [...tests] }), by: [...by] })),
  };
}

function presentAttribute(id: AttributeId): Attribute {
  const { type, words, whereFound } = ATTRIBUTES[id];
  return { name: id, ...presentType(type), words, whereFound };
}

function presentType(type: AttributeType): Pick<Attribute, 'type' | 'is' | 'choices'> {
  switch (type.kind) {
    case 'months':
      return { type: 'number', is: 'months' };
    case 'hours':
      return { type: 'number', is: 'hours' };
    case 'yes_no':
      return { type: 'boolean', is: 'yes_no' };
    case 'date':
      return { type: 'string', is: 'date' };
    case 'choice':
      return { type: 'string', is: 'choice', choices: type.choices.map(({ value, words }) => ({ value, words })) };
  }
}

export function presentItemKind({ id, itemClass, name, zone, dates, attributes }: kinds.ItemKind): ItemKind {
  const found = FACT_KINDS.flatMap((fact) => {
    const whereFound = dates[fact];
    return whereFound === undefined ? [] : [{ fact, whereFound }];
  });
  return { id, itemClass, name, zone, dates: found, attributes: attributes.map(presentAttribute) };
}

export function presentScheme({ id, name, weight, always, about }: schemes.Scheme): Scheme {
  return { id, name, weight, always, about };
}
