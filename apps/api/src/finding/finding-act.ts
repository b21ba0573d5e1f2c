/** An act on one finding: it answers with the finding as it stands afterwards. */
import type { ActionContext } from '@garboard/actions/context.ts';
import type { At, StepRefusal } from '@garboard/actions/finding/take-step.ts';
import type { Written } from '@garboard/actions/result.ts';
import { Finding } from '@garboard/contract/finding/finding.ts';
import type { FindingView } from '@garboard/db/finding/list-findings.ts';
import type { z } from '@hono/zod-openapi';
import { FindingPath } from '../openapi/declare.ts';
import { type DeclaredAct, versionedAct } from '../openapi/versioned-act.ts';
import { presentFinding } from './present-finding.ts';

const FINDING = { tags: ['Findings'], params: FindingPath, answer: Finding, present: presentFinding };
const AS_IT_STANDS = { ...FINDING, inWords: 'The finding as it stands now.' };
const MADE = { ...FINDING, inWords: 'The new finding.', madeAt: ({ id }: FindingView) => `/v1/findings/${id}` };

type Declared<B extends z.ZodType> = DeclaredAct<B> & {
  readonly path: `/v1/findings/{findingId}${string}`;
  /** `201`: the act makes a finding of its own, and answers with that one. */
  readonly answers: 200 | 201;
};

type Act<B extends z.ZodType> = (
  ctx: ActionContext,
  at: At,
  said: z.infer<B>,
) => Promise<Written<FindingView, StepRefusal>>;

export const findingAct = <B extends z.ZodType>({ answers, ...declared }: Declared<B>, act: Act<B>) =>
  versionedAct(declared, answers === 201 ? MADE : AS_IT_STANDS, (ctx, findingId, expectedVersion, said) =>
    act(ctx, { findingId, expectedVersion }, said),
  );
