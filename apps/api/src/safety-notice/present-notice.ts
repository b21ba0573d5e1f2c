/** A notice and its answers as the API shows them. */
import type { NoticeAnswer, NoticeItem } from '@garboard/contract/safety-notice/answer.ts';
import type { SafetyNotice } from '@garboard/contract/safety-notice/notice.ts';
import type { ItemRecord } from '@garboard/db/item/item-record.ts';
import type { AnswerRecord } from '@garboard/db/safety-notice/answer-record.ts';
import type { NoticeCounts } from '@garboard/db/safety-notice/count-answers.ts';
import type * as db from '@garboard/db/safety-notice/notice-items.ts';
import { type NoticeRecord, toNotice } from '@garboard/db/safety-notice/notice-record.ts';
import { formatDay } from '@garboard/domain/calendar/day.ts';
import { deadlineDay } from '@garboard/domain/safety-notice/notice.ts';
import type { ItemStanding } from '@garboard/domain/safety-notice/standing-of-item.ts';

export function presentNotice(record: NoticeRecord, counts: NoticeCounts): SafetyNotice {
  const { reference, address, document, manufactured, withdrawn } = record;
  return {
    id: record.id,
    title: record.title,
    publisher: record.publisher,
    ...(reference !== null && { reference }),
    issuedOn: record.issuedOn,
    ...(address !== null && { address }),
    ...(document !== null && { document }),
    kinds: [...record.kinds],
    makers: [...record.makers],
    models: [...record.models],
    serials: record.serials.map(presentEnds),
    ...(manufactured && { manufactured: presentEnds(manufactured) }),
    hazard: record.hazard,
    action: { ...record.action },
    deadline: { ...record.deadline },
    weight: record.weight,
    dueOn: formatDay(deadlineDay(toNotice(record))),
    state: stateOf(record, counts),
    counts: { ...counts },
    recordedAt: record.recordedAt,
    recordedBy: record.recordedBy,
    ...(withdrawn && { withdrawn: { ...withdrawn } }),
    version: record.version,
  };
}

function presentEnds({ from, to }: { readonly from: string | null; readonly to: string | null }) {
  return { ...(from !== null && { from }), ...(to !== null && { to }) };
}

function stateOf({ withdrawn }: NoticeRecord, { affected, mayBeAffected }: NoticeCounts): SafetyNotice['state'] {
  if (withdrawn) return 'withdrawn';
  return affected + mayBeAffected > 0 ? 'open' : 'answered';
}

export function presentNoticeItem({ vessel, item, standing, answers }: db.NoticeItem): NoticeItem {
  return {
    vessel: { ...vessel },
    item: presentThing(item),
    ...presentStanding(standing),
    answers: answers.map((each) => presentAnswer(each, answers)),
  };
}

function presentStanding(standing: ItemStanding): Pick<NoticeItem, 'state' | 'because'> {
  switch (standing.kind) {
    case 'settled':
      return { state: 'answered', because: [] };
    case 'open':
      return standing.match.kind === 'affected'
        ? { state: 'affected', because: [...standing.match.because] }
        : { state: 'may_be_affected', because: [...standing.match.open] };
  }
}

type Thing = Pick<ItemRecord, 'id' | 'kind' | 'label' | 'maker' | 'model' | 'serialNumber' | 'quantity'>;

export function presentThing({ id, kind, label, maker, model, serialNumber, quantity }: Thing): NoticeItem['item'] {
  return { id, kind, label, maker, model, serialNumber, quantity };
}

export function presentAnswer(record: AnswerRecord, all: readonly AnswerRecord[]): NoticeAnswer {
  const { name = '', capacity, certificate } = record.doneBy;
  return {
    id: record.id,
    itemId: record.itemId,
    answer: record.answer,
    on: record.on,
    doneBy: { name, ...(capacity && { capacity }), ...(certificate && { certificate }) },
    ...(record.evidence && { evidence: record.evidence }),
    ...(record.reference && { reference: record.reference }),
    ...(record.serialRead && { serialRead: record.serialRead }),
    replaced: record.replaced,
    ...(record.until && { until: record.until }),
    ...(record.note && { note: record.note }),
    corrects: record.corrects,
    struckOutBy: all.find(({ corrects }) => corrects === record.id)?.id ?? null,
    recordedAt: record.recordedAt,
    recordedBy: record.recordedBy,
  };
}
