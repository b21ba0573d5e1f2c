/** What the addresses of the notices may say. Anything else in them is left aside. */
import { text } from '../due-list/due-search.ts';
import { type NoticeState, strings } from '../strings/safety-notice.ts';

/** `all`: whatever its state. Nothing said: what is open. */
export type NoticesSearch = { state?: NoticeState | 'all' };

export function readNoticesSearch(raw: Record<string, unknown>): NoticesSearch {
  const states = ['all', ...Object.keys(strings.states)] as (NoticeState | 'all')[];
  const state = states.find((each) => each === raw.state);
  return state ? { state } : {};
}

export type AnswerSearch = { item?: string; corrects?: string };

export function readAnswerSearch(raw: Record<string, unknown>): AnswerSearch {
  const [item, corrects] = [text(raw.item), text(raw.corrects)];
  return { ...(item && { item }), ...(corrects && { corrects }) };
}
