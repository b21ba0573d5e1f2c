/** The catalogue: rules with their sources, item kinds, schemes. */
import * as z from 'zod';
import { Action, Source, WeightCode } from '../item/obligation.ts';
import { pageOf } from '../shared.ts';
import { SchemeCode } from '../vessel/vessel.ts';

const Reads = z
  .object({
    facts: z.array(z.string()),
    tests: z.array(z.string()),
    attributes: z.array(z.object({ name: z.string(), type: z.enum(['string', 'number', 'boolean']), words: z.string() })),
    events: z.array(z.string()),
  })
  .meta({ id: 'RuleReads', description: 'What the rule reads, so that a request to explain can be written from this page.' });

export const Rule = z
  .object({
    id: z.string(),
    scheme: SchemeCode,
    weight: WeightCode,
    kinds: z.array(z.string()),
    duties: z.array(z.object({ id: z.string(), action: Action, inWords: z.string(), resetBy: z.string() })),
    checks: z.array(z.object({ id: z.string(), inWords: z.string() })),
    source: Source,
    note: z.string().optional(),
    inWords: z.string(),
    reads: Reads,
  })
  .meta({ id: 'Rule' });
export type Rule = z.infer<typeof Rule>;
export const RulePage = pageOf(Rule, 'RulePage');

export const ItemKind = z
  .object({ id: z.string(), name: z.string(), zone: z.string(), usualFacts: z.array(z.string()), whereDatesAreFound: z.string(), caution: z.string().optional() })
  .meta({ id: 'ItemKind' });
export type ItemKind = z.infer<typeof ItemKind>;
export const ItemKindPage = pageOf(ItemKind, 'ItemKindPage');

export const Scheme = z
  .object({ id: SchemeCode, name: z.string(), weight: WeightCode, always: z.boolean(), about: z.string() })
  .meta({ id: 'Scheme' });
export type Scheme = z.infer<typeof Scheme>;
export const SchemePage = pageOf(Scheme, 'SchemePage');
