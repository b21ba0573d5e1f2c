/** Says what the organisation has agreed about its findings; the dates that hang on it are right when this returns. */
import { loadTerms, saveTerms, type TermsRecord } from '@garboard/db/finding/terms.ts';
import type { FindingTerms } from '@garboard/domain/finding/terms.ts';
import { audit } from '../audit.ts';
import type { ActionContext } from '../context.ts';
import { done, refused, type Written } from '../result.ts';
import { write } from '../write.ts';
import { refreshFleetMatters } from './refresh-matters.ts';

export function setTerms(
  ctx: ActionContext,
  { terms, expectedVersion }: { readonly terms: FindingTerms; readonly expectedVersion: number },
): Promise<Written<TermsRecord, 'stale'>> {
  return write(ctx, 'put_off_findings', async (write) => {
    const before = await loadTerms(write.tx);
    const isCurrent = before.version === expectedVersion;
    if (!isCurrent || !(await saveTerms(write.tx, ctx.organisationId, { terms, version: expectedVersion })))
      return refused({ kind: 'stale', version: before.version });
    const after = { terms, version: expectedVersion + 1 };
    audit(write, { verb: 'set_finding_terms', subject: 'organisation', subjectId: ctx.organisationId, before, after });
    await refreshFleetMatters(write);
    return done(after);
  });
}
