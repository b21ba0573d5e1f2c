/** What a vessel's limitations and referrals want of whom, written to the due list. */
import { loadCalendar } from '@garboard/db/finding/calendar.ts';
import { loadMatterIds, type Matter, putMatters } from '@garboard/db/finding/matters.ts';
import type { Scoped } from '@garboard/db/scope.ts';
import { loadUnlifted } from '@garboard/db/survey-visit/limitations.ts';
import { loadOpenReferrals } from '@garboard/db/survey-visit/referrals.ts';
import { nextAfter } from '@garboard/domain/finding/due-of-finding.ts';
import { matterOfLimitation, matterOfReferral } from '@garboard/domain/survey-visit/matters.ts';

export async function refreshVisitMatters(tx: Scoped, organisationId: string, vesselId: string): Promise<void> {
  const calendar = await loadCalendar(tx, vesselId);
  const limitations = (await loadUnlifted(tx, vesselId)).flatMap((record): Matter[] => {
    const said = matterOfLimitation(record, nextAfter(calendar.visits, record.imposedOn));
    return said ? [{ id: record.id, vesselId, ...said }] : [];
  });
  const referrals = (await loadOpenReferrals(tx, vesselId)).flatMap((record): Matter[] => {
    const said = matterOfReferral({ ...record, isAnswered: false });
    return said ? [{ id: record.id, vesselId, ...said }] : [];
  });
  const before = await loadMatterIds(tx, vesselId, ['limitation', 'referral']);
  await putMatters(tx, organisationId, before, [...limitations, ...referrals]);
}
