/** The lines of a due list that a rule or a notice asks for. */
import type { DueList, DueRow } from '@garboard/contract/due-list/due-list.ts';

export const ofRules = ({ items }: DueList): DueRow[] => items.filter((line): line is DueRow => 'ruleId' in line);
