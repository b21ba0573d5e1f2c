/** A rule's id says whether it is published: those of own rules are UUIDs. */
import { Id } from '@garboard/contract/shared.ts';
import { findRule } from '@garboard/domain/rule/rules.ts';

export function kindOfRule(ruleId: string): 'published' | 'own' | 'none' {
  if (findRule(ruleId)) return 'published';
  return Id.safeParse(ruleId).success ? 'own' : 'none';
}

export const PUBLISHED =
  'It is published, so it stays as it is. Put your own figure in its place for a vessel, or add a rule of your own.';
