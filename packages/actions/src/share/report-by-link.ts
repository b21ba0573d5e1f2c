/** A yard reports the work that it was given, with a photograph of it, and can do nothing else by its link. */
import { createHash } from 'node:crypto';
import type { Files } from '@garboard/blobs/files.ts';
import { loadFinding } from '@garboard/db/finding/findings.ts';
import type { FindingView } from '@garboard/db/finding/list-findings.ts';
import { inOrganisation } from '@garboard/db/scope.ts';
import type { Evidence } from '@garboard/domain/finding/entry.ts';
import { NEXT } from '@garboard/domain/finding/next-state.ts';
import { readsAs } from '@garboard/domain/finding/words.ts';
import type { ActionContext } from '../context.ts';
import { addPiece } from '../evidence/add-piece.ts';
import { startUpload } from '../evidence/start-upload.ts';
import { type RemedyStep, takeRemedyStep } from '../finding/take-remedy-step.ts';
import { done, type Refused, refused, type Written } from '../result.ts';
import { type ByLink, enterByLink } from './enter-by-link.ts';

export type Report = {
  /** Which work of the link, counted from 0. */
  readonly at: number;
  readonly work: string;
  readonly doneOn: string;
  readonly name: string;
  /** JPEG, PNG, WebP or AVIF. */
  readonly photograph: Buffer | null;
};
type Refusal = 'not_found' | 'conflict' | 'invalid';

export async function reportByLink(by: ByLink, files: Files, report: Report): Promise<Written<FindingView, Refusal>> {
  const entered = await enterByLink(by, 'yard');
  const findingId = entered?.link.findingIds[report.at];
  if (!entered || findingId === undefined) return refused({ kind: 'not_found' });
  const { ctx } = entered;
  const finding = await inOrganisation(ctx.db, ctx, (tx) => loadFinding(tx, findingId));
  if (!finding) return refused({ kind: 'not_found' });
  // Said before a photograph is kept for nothing; judged once more when it is written.
  if (!NEXT[finding.finding.remedy.state].reported_done)
    return refused({ kind: 'conflict', detail: `It stands as: ${readsAs(finding.finding)}.` });
  const shown = await keepPhotograph(ctx, files, finding, report);
  if (!shown.ok) return shown;
  const doneBy = { name: report.name, capacity: 'yard', certificate: null } as const;
  const { work, doneOn } = report;
  const step: RemedyStep = { step: 'reported_done', work, doneOn, doneBy, facts: [], evidence: shown.value };
  const taken = await takeRemedyStep(ctx, { findingId, expectedVersion: finding.version, step, facts: [] });
  return taken.ok || taken.failure.kind !== 'stale' ? (taken as Written<FindingView, Refusal>) : changedMeanwhile();
}

const changedMeanwhile = () =>
  refused({
    kind: 'conflict',
    detail: 'Somebody wrote about it at the same moment. Look again, and send it once more.',
  });

/** What shows the work; nothing where no photograph was sent. */
async function keepPhotograph(
  ctx: ActionContext,
  files: Files,
  { vesselId, finding }: NonNullable<Awaited<ReturnType<typeof loadFinding>>>,
  { photograph, work }: Report,
): Promise<{ readonly ok: true; readonly value: readonly Evidence[] } | Refused<Refusal | 'forbidden' | 'key_reused'>> {
  if (photograph === null) return done([]);
  const file = { vesselId, sha256: createHash('sha256').update(photograph).digest('hex'), bytes: photograph.length };
  const said = { words: work, zone: finding.zone, point: null, visitId: null, takenOn: null };
  const upload = await startUpload(ctx, { ...file, said });
  if (!upload.ok) return upload;
  const piece = { uploadId: upload.value.id, expectedVersion: upload.value.version, body: photograph };
  const kept = await addPiece(ctx, files, piece);
  if (!kept.ok) return kept.failure.kind === 'stale' ? changedMeanwhile() : (kept as Refused<Refusal>);
  const { fate } = kept.value;
  if (fate.kind !== 'kept')
    return refused({
      kind: 'invalid',
      errors: [{ pointer: '/photograph', detail: fate.kind === 'refused' ? fate.because : 'did not arrive whole' }],
    });
  return done([{ kind: 'photograph', words: work, evidenceId: fate.evidenceId }]);
}
