/** What somebody has typed so far of a notice; every box is text until it is sent. */
import type { Problem } from '@garboard/client/api-problem.ts';
import { strings as dates } from '../strings/record.ts';
import { strings } from '../strings/safety-notice.ts';
import { readDate } from '../ui/read-date.ts';
import type { NewSafetyNotice } from './notice.query.ts';
import { readSerials } from './read-serials.ts';

export const NOTICE_BOXES = [
  'title',
  'publisher',
  'reference',
  'issuedOn',
  'document',
  'address',
  'kind',
  'makers',
  'models',
  'serials',
  'madeFrom',
  'madeTo',
  'hazard',
  'action',
  'actionWords',
  'deadline',
  'deadlineOn',
  'deadlineDays',
  'weight',
] as const;
export type NoticeBox = (typeof NOTICE_BOXES)[number];
export type NoticeDraft = Readonly<Record<NoticeBox, string>>;
export type NoticeFaults = Partial<Record<NoticeBox, string>>;

const { newNotice } = strings;

export const emptyNotice: NoticeDraft = {
  ...(Object.fromEntries(NOTICE_BOXES.map((box) => [box, ''])) as NoticeDraft),
  action: 'stop_using',
  deadline: 'before_next_use',
  weight: 'maker',
};

type Ready = { kind: 'ready'; body: NewSafetyNotice } | { kind: 'faults'; faults: NoticeFaults };

export function toNewNotice(draft: NoticeDraft): Ready {
  const serials = readSerials(draft.serials);
  const days = {
    issuedOn: wholeDay(draft.issuedOn),
    madeFrom: optionalDay(draft.madeFrom),
    madeTo: optionalDay(draft.madeTo),
    deadlineOn: draft.deadline === 'on' ? wholeDay(draft.deadlineOn) : {},
  };
  const faults: NoticeFaults = {
    ...neededFaults(draft),
    ...Object.fromEntries(Object.entries(days).flatMap(([box, { fault }]) => (fault ? [[box, fault]] : []))),
    ...(serials.kind === 'fault' && { serials: newNotice.serialFault(serials.line) }),
    ...(draft.deadline === 'days_after_issue' &&
      !/^\d{1,4}$/.test(draft.deadlineDays.trim()) && { deadlineDays: newNotice.wholeNumber }),
  };
  if (Object.keys(faults).length > 0 || serials.kind === 'fault') return { kind: 'faults', faults };
  const made = {
    ...(days.madeFrom.day && { from: days.madeFrom.day }),
    ...(days.madeTo.day && { to: days.madeTo.day }),
  };
  return {
    kind: 'ready',
    body: {
      title: draft.title.trim(),
      publisher: draft.publisher.trim(),
      ...optional(draft, 'reference', 'document', 'address'),
      issuedOn: days.issuedOn.day ?? '',
      kinds: [draft.kind],
      makers: linesOf(draft.makers),
      models: linesOf(draft.models),
      serials: serials.ranges,
      ...(Object.keys(made).length > 0 && { manufactured: made }),
      hazard: draft.hazard.trim(),
      action: { kind: draft.action as NewSafetyNotice['action']['kind'], words: draft.actionWords.trim() },
      deadline: deadlineOf(draft, days.deadlineOn.day),
      weight: draft.weight as NewSafetyNotice['weight'],
    },
  };
}

/** For the preview: only what decides which things it names; `null` while that cannot be told. */
export function toTrial(draft: NoticeDraft): NewSafetyNotice | null {
  const trial = toNewNotice({
    ...draft,
    title: draft.title || '–',
    publisher: draft.publisher || '–',
    document: draft.document || '–',
    address: '',
    hazard: draft.hazard || '–',
    actionWords: draft.actionWords || '–',
    issuedOn: '2000-01-01',
    deadline: 'before_next_use',
  });
  return trial.kind === 'ready' ? trial.body : null;
}

function neededFaults(draft: NoticeDraft): NoticeFaults {
  const needed = (['title', 'publisher', 'kind', 'hazard', 'actionWords'] as const).filter(
    (box) => draft[box].trim() === '',
  );
  const nowhere = draft.document.trim() === '' && draft.address.trim() === '' ? (['document'] as const) : [];
  return Object.fromEntries([...needed, ...nowhere].map((box) => [box, newNotice.needed]));
}

function deadlineOf(draft: NoticeDraft, on: string | undefined): NewSafetyNotice['deadline'] {
  if (draft.deadline === 'on' && on) return { kind: 'on', on };
  if (draft.deadline === 'days_after_issue') return { kind: 'days_after_issue', days: Number(draft.deadlineDays) };
  return { kind: 'before_next_use' };
}

type Day = { day?: string; fault?: string };

function wholeDay(typed: string): Day {
  const read = readDate(typed);
  if (read.kind === 'fault') return { fault: read.why };
  return read.date.length === 10 ? { day: read.date } : { fault: dates.dateFaults.day };
}

const optionalDay = (typed: string): Day => (typed.trim() === '' ? {} : wholeDay(typed));

const linesOf = (text: string) =>
  text
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '');

function optional(draft: NoticeDraft, ...boxes: ('reference' | 'document' | 'address')[]): Partial<NewSafetyNotice> {
  return Object.fromEntries(boxes.filter((box) => draft[box].trim() !== '').map((box) => [box, draft[box].trim()]));
}

const AT: Record<string, NoticeBox> = {
  kinds: 'kind',
  '/action/words': 'actionWords',
  '/action/kind': 'action',
  '/deadline/on': 'deadlineOn',
  '/deadline/days': 'deadlineDays',
  '/manufactured/from': 'madeFrom',
  '/manufactured/to': 'madeTo',
  manufactured: 'madeFrom',
};

/** Brings each fault the API points at to its box; `others` are of none. */
export function noticeFaults(problem: Problem): { faults: NoticeFaults; others: string[] } {
  const faults: NoticeFaults = {};
  const others: string[] = [];
  for (const { pointer, detail } of problem.errors ?? []) {
    const [, head = ''] = pointer.split('/');
    const box = AT[pointer] ?? AT[head] ?? NOTICE_BOXES.find((each) => each === head);
    if (box) faults[box] = faults[box] ? `${faults[box]}; ${detail}` : detail;
    else others.push(detail);
  }
  if (others.length === 0 && Object.keys(faults).length === 0) others.push(problem.detail ?? problem.title);
  return { faults, others };
}
