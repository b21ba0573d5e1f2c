/** What was typed into a line, as the API takes it; `null` where its words are missing. */
import type { components } from '@garboard/client/generated/api.d.ts';
import { strings } from '../strings/survey-visit.ts';
import { readersToday } from '../ui/calendar.ts';
import { readDate } from '../ui/read-date.ts';
import type { Line, Visit } from './visit.query.ts';

type Schemas = components['schemas'];
export type LineKind = keyof typeof strings.one.kinds;

export const EMPTY_LINE = {
  kind: 'sound',
  words: '',
  reason: 'no_access_stowed_gear',
  hazard: 'equipment',
  urgency: 'this_season',
  trade: 'rigger',
  dueOn: '',
  point: '',
  measure: 'moisture',
  value: '',
  instrument: '',
  deadline: '',
};
export type LineDraft = { readonly [Key in keyof typeof EMPTY_LINE]: string };

type Of = Pick<Visit, 'id' | 'vessel' | 'client'>;

export function lineOf(draft: LineDraft, visit: Of, zone: string): Line | null {
  const kind = draft.kind as LineKind;
  const text = draft.words.trim();
  const words = text === '' ? {} : { words: text };
  const reason = draft.reason as Schemas['LimitationReasonCode'];
  switch (kind) {
    case 'sound':
      return { kind: 'zone', body: { zone, answer: 'sound', ...words } };
    case 'not_examined':
      return { kind: 'zone', body: { zone, answer: 'not_examined', reason, ...words } };
    case 'finding':
      return text === '' ? null : foundLine(visit, findingOf(draft, text, zone, visit));
    case 'limitation':
      return text === '' ? null : { kind, body: { zone, what: text, reason } };
    case 'reading':
      return readingOf(draft, zone, words);
    case 'referral':
      return referralOf(draft, text, zone);
  }
}

function findingOf(
  { hazard, urgency, deadline }: LineDraft,
  what: string,
  zone: string,
  { id: visitId, client }: Pick<Visit, 'id' | 'client'>,
): Schemas['NewFinding'] | null {
  const limit = deadline.trim() === '' ? null : readDate(deadline);
  if (limit && (limit.kind === 'fault' || limit.date.length < 10)) return null;
  return {
    ...{ zone, what, visitId, on: readersToday(), evidence: [] },
    hazard: hazard as Schemas['HazardCode'],
    urgency: urgency as Schemas['UrgencyCode'],
    ...(limit && { limit: { on: limit.date, source: client ?? strings.one.theList } }),
  };
}

const foundLine = ({ vessel }: Of, body: Schemas['NewFinding'] | null): Line | null =>
  body && { kind: 'finding', vesselId: vessel.id, body };

/** A comma is read as a decimal point. No number is no measurement, and then words are asked for. */
function readingOf(
  { point, measure, value, instrument }: LineDraft,
  zone: string,
  words: { words?: string },
): Line | null {
  const number = Number(value.trim().replace(',', '.'));
  const isMeasured = value.trim() !== '';
  if (point.trim() === '' || Number.isNaN(number) || (!isMeasured && !words.words)) return null;
  const body = { zone, point: point.trim(), measure: measure as Schemas['MeasureCode'], ...words };
  return {
    kind: 'reading',
    body: { ...body, ...(isMeasured && { value: number }), ...(instrument && { instrument }) },
  };
}

function referralOf({ trade, dueOn }: LineDraft, what: string, zone: string): Line | null {
  const read = readDate(dueOn);
  if (what === '' || read.kind === 'fault' || read.date.length < 10) return null;
  return { kind: 'referral', body: { zone, what, trade: trade as Schemas['TradeCode'], dueOn: read.date } };
}
