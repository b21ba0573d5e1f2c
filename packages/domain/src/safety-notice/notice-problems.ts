/** What is wrong with a notice as entered that its shape alone does not show. */
import type { Day } from '../calendar/day.ts';
import { ITEM_KIND_IDS } from '../item/item-kind.ts';
import { squeezed } from './likeness.ts';
import type { SafetyNotice } from './notice.ts';
import { isReversed, type SerialRange } from './serial-range.ts';

export type NoticeProblem = { readonly pointer: string; readonly detail: string };
type Entered = Omit<SafetyNotice, 'id' | 'recordedAt' | 'withdrawn' | 'kinds'> & { readonly kinds: readonly string[] };

/** `latest`: the last day that today can be where somebody reads the notice. */
export function noticeProblems(notice: Entered, latest: Day): NoticeProblem[] {
  return [
    ...notice.kinds.flatMap((kind, at) => kindProblems(kind, at)),
    ...namesProblems('makers', notice.makers),
    ...namesProblems('models', notice.models),
    ...notice.serials.flatMap((range, at) => rangeProblems(range, `/serials/${at}`)),
    ...madeProblems(notice),
    ...(notice.issuedOn > latest ? [{ pointer: '/issuedOn', detail: 'lies in the future' }] : []),
    ...deadlineProblems(notice),
    ...(notice.address === null && notice.document === null
      ? [{ pointer: '/document', detail: 'say where the notice can be read: an address or a document' }]
      : []),
  ];
}

function kindProblems(kind: string, at: number): NoticeProblem[] {
  const known = ITEM_KIND_IDS.some((id) => id === kind);
  return known ? [] : [{ pointer: `/kinds/${at}`, detail: 'is no kind of item in the catalogue' }];
}

/** A name of punctuation alone would be like every other. */
function namesProblems(at: 'makers' | 'models', names: readonly string[]): NoticeProblem[] {
  return names.flatMap((name, index) =>
    squeezed(name) === '' ? [{ pointer: `/${at}/${index}`, detail: 'must hold a letter or a digit' }] : [],
  );
}

function rangeProblems(range: SerialRange, pointer: string): NoticeProblem[] {
  const { from, to } = range;
  const empty = [from, to].some((end) => end !== null && squeezed(end) === '');
  if (empty) return [{ pointer, detail: 'must hold a letter or a digit at each end' }];
  if (from === null || to === null) return from === to ? [{ pointer, detail: 'must have at least one end' }] : [];
  return isReversed(range) ? [{ pointer, detail: 'ends before it begins' }] : [];
}

function madeProblems({ manufactured }: Entered): NoticeProblem[] {
  if (manufactured === null) return [];
  const { from, to } = manufactured;
  if (from === null && to === null) return [{ pointer: '/manufactured', detail: 'must have at least one end' }];
  return from !== null && to !== null && from > to
    ? [{ pointer: '/manufactured/to', detail: 'lies before the day it begins' }]
    : [];
}

function deadlineProblems({ deadline, issuedOn }: Entered): NoticeProblem[] {
  return deadline.kind === 'on' && deadline.on < issuedOn
    ? [{ pointer: '/deadline/on', detail: 'lies before the day of the notice' }]
    : [];
}
