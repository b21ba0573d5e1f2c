/** Enters a fleet's notices and their answers through the actions, each on its day. */
import { answerNotice } from '@garboard/actions/safety-notice/answer-notice.ts';
import { enterNotice } from '@garboard/actions/safety-notice/enter-notice.ts';
import { withdrawNotice } from '@garboard/actions/safety-notice/withdraw-notice.ts';
import type { Db } from '@garboard/db/pool.ts';
import { readNoticeItems } from '@garboard/db/safety-notice/notice-items.ts';
import { dayOf, toNotice } from '@garboard/db/safety-notice/notice-record.ts';
import { inOrganisation, wholeFleet } from '@garboard/db/scope.ts';
import { officeHours, wanted } from './office.ts';
import type { NoticePlan } from './plan.ts';

export async function layOutNotices(db: Db, organisationId: string, plans: readonly NoticePlan[]): Promise<void> {
  const at = officeHours(db, organisationId);
  for (const { notice, enteredOn, answers, withdrawn } of plans) {
    const entered = wanted(await enterNotice(at(enteredOn), notice));
    const things = await inOrganisation(db, wholeFleet(organisationId), (tx) =>
      readNoticeItems(tx, { notice: toNotice(entered), cut: {} }),
    );
    // By what they are called: the ids are another each time.
    const inOrder = things.toSorted((a, b) => (nameOf(a) < nameOf(b) ? -1 : 1));
    for (const [index, { item }] of inOrder.entries()) {
      const answer = answers[index % answers.length];
      if (answer) wanted(await answerNotice(at(dayOf(answer.on)), { noticeId: entered.id, itemId: item.id, answer }));
    }
    if (!withdrawn) continue;
    const { on, reason } = withdrawn;
    wanted(await withdrawNotice(at(on), { noticeId: entered.id, expectedVersion: entered.version, reason }));
  }
}

type Thing = { readonly vessel: { readonly name: string }; readonly item: { readonly label: string } };
const nameOf = ({ vessel, item }: Thing) => `${vessel.name} ${item.label}`;
