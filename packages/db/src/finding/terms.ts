/** What the organisation has agreed about findings. Where nothing was ever said there is no row: that reads as version 1 of the house's own figures. */
import { type FindingTerms, HOUSE_TERMS } from '@garboard/domain/finding/terms.ts';
import type { Scoped } from '../scope.ts';

export type TermsRecord = { readonly terms: FindingTerms; readonly version: number };

export async function loadTerms(tx: Scoped): Promise<TermsRecord> {
  const row = await tx.selectFrom('finding_terms').selectAll().executeTakeFirst();
  if (!row) return { terms: HOUSE_TERMS, version: 1 };
  return {
    terms: {
      withinWeeksDays: row.within_weeks_days,
      putOffAtMostDays: row.put_off_at_most_days,
      secondPairOfEyes: row.second_pair_of_eyes,
    },
    version: row.version,
  };
}

/** Writes only over the version that was read; `false` when somebody was faster. */
export async function saveTerms(tx: Scoped, organisationId: string, { terms, version }: TermsRecord): Promise<boolean> {
  const said = {
    within_weeks_days: terms.withinWeeksDays,
    put_off_at_most_days: terms.putOffAtMostDays,
    second_pair_of_eyes: terms.secondPairOfEyes,
    version: version + 1,
  };
  const { numInsertedOrUpdatedRows } = await tx
    .insertInto('finding_terms')
    .values({ organisation_id: organisationId, ...said })
    .onConflict((conflict) =>
      conflict.column('organisation_id').doUpdateSet(said).where('finding_terms.version', '=', version),
    )
    .executeTakeFirstOrThrow();
  return numInsertedOrUpdatedRows === 1n;
}
