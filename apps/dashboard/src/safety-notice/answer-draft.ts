/** What somebody has typed so far of an answer; every box is text until it is sent. */
import type { Problem } from '@garboard/client/api-problem.ts';
import { strings as dates } from '../strings/record.ts';
import { type NoticeAnswerCode, strings } from '../strings/safety-notice.ts';
import { formatDay } from '../ui/calendar.ts';
import { readDate } from '../ui/read-date.ts';
import type { NewNoticeAnswer, NoticeAnswer } from './notice.query.ts';

const BOXES = [
  'answer',
  'on',
  'name',
  'capacity',
  'certificate',
  'evidence',
  'reference',
  'serialRead',
  'until',
  'note',
] as const;
export type AnswerBox = (typeof BOXES)[number];
export type AnswerDraft = Readonly<Record<AnswerBox, string>> & { readonly replaced: boolean };
export type AnswerFaults = Partial<Record<AnswerBox, string>>;

export const emptyAnswer: AnswerDraft = {
  ...(Object.fromEntries(BOXES.map((box) => [box, ''])) as Record<AnswerBox, string>),
  replaced: false,
};

/** A correction starts from what it corrects. */
export function draftOfAnswer(given: NoticeAnswer): AnswerDraft {
  return {
    answer: given.answer,
    on: formatDay(given.on),
    name: given.doneBy.name,
    capacity: given.doneBy.capacity ?? '',
    certificate: given.doneBy.certificate ?? '',
    evidence: given.evidence ?? '',
    reference: given.reference ?? '',
    serialRead: given.serialRead ?? '',
    until: given.until ? formatDay(given.until) : '',
    note: '',
    replaced: false,
  };
}

/** Which boxes an answer has beyond what, when, who and a note. */
export function boxesOfAnswer(answer: string): { serial: boolean; proof: boolean; until: boolean; replaced: boolean } {
  return {
    serial: answer === 'done' || answer === 'not_affected',
    proof: answer === 'done' || answer === 'not_affected',
    until: answer === 'deferred',
    replaced: answer === 'done',
  };
}

type Ready = { kind: 'ready'; body: NewNoticeAnswer } | { kind: 'faults'; faults: AnswerFaults };

export function toNewAnswer(draft: AnswerDraft, corrects: string | undefined): Ready {
  const boxes = boxesOfAnswer(draft.answer);
  const [on, until] = [wholeDay(draft.on), boxes.until ? wholeDay(draft.until) : { day: undefined, fault: undefined }];
  const faults: AnswerFaults = {
    ...(draft.answer === '' && { answer: strings.answerForm.chooseFault }),
    ...(on.fault && { on: on.fault }),
    ...(until.fault && { until: until.fault }),
    ...(draft.name.trim() === '' && { name: strings.answerForm.nameFault }),
  };
  if (Object.keys(faults).length > 0 || !on.day) return { kind: 'faults', faults };
  const said = (box: AnswerBox) => (draft[box].trim() === '' ? undefined : draft[box].trim());
  const given = {
    capacity: said('capacity'),
    certificate: said('certificate'),
    evidence: boxes.proof ? said('evidence') : undefined,
    reference: said('reference'),
    serialRead: boxes.serial ? said('serialRead') : undefined,
    note: said('note'),
  };
  const { capacity, certificate, ...rest } = given;
  return {
    kind: 'ready',
    body: withoutEmpty({
      answer: draft.answer as NoticeAnswerCode,
      on: on.day,
      doneBy: withoutEmpty({ name: draft.name.trim(), capacity, certificate }),
      ...rest,
      until: until.day,
      replaced: boxes.replaced && draft.replaced,
      corrects,
    }) as NewNoticeAnswer,
  };
}

function wholeDay(typed: string): { day?: string | undefined; fault?: string | undefined } {
  const read = readDate(typed);
  if (read.kind === 'fault') return { fault: read.why };
  return read.date.length === 10 ? { day: read.date } : { fault: dates.dateFaults.day };
}

const withoutEmpty = (record: object): object =>
  Object.fromEntries(Object.entries(record).filter(([, value]) => value !== undefined));

/** Brings each fault the API points at to its box; `others` are of none. */
export function answerFaults(problem: Problem): { faults: AnswerFaults; others: string[] } {
  const all = (problem.errors ?? []).map(({ pointer, detail }) => ({ box: pointer.split('/').at(-1) ?? '', detail }));
  const isBox = (box: string): box is AnswerBox => BOXES.some((each) => each === box);
  const faults = Object.fromEntries(all.filter(({ box }) => isBox(box)).map(({ box, detail }) => [box, detail]));
  const others = all.filter(({ box }) => !isBox(box)).map(({ detail }) => detail);
  return { faults, others: all.length === 0 ? [problem.detail ?? problem.title] : others };
}
