/** How facts become a due date: the shape of a rule. */
import type { SchemeId, Weight } from './scheme.ts';

/** How far the figure was checked. Shown wherever the date shows. */
export type SourceStatus = 'read' | 'second_hand' | 'memory' | 'common_practice';

export type Source = {
  readonly publication: string | null;
  readonly clause: string | null;
  readonly address: string | null;
  readonly status: SourceStatus;
};

export const ACTIONS = ['service', 'inspect', 'test', 'replace', 'withdraw', 'overhaul'] as const;
export type ActionKind = (typeof ACTIONS)[number];

/** The named thing that somebody must do: `words` as an instruction ("Service at an approved station"). */
export type Action = { readonly kind: ActionKind; readonly words: string };

export type Rule = {
  readonly id: string;
  readonly scheme: SchemeId;
  readonly weight: Weight;
};
