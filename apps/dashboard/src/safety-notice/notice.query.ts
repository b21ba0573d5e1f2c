import { answer, everyPage } from '@garboard/client/client.ts';
import type { components } from '@garboard/client/generated/api.d.ts';
import { queryOptions } from '@tanstack/react-query';
import { api } from '../api/client.ts';
import type { NoticeState } from '../strings/safety-notice.ts';

export type SafetyNotice = components['schemas']['SafetyNotice'];
export type NoticeItem = components['schemas']['NoticeItem'];
export type NoticeAnswer = components['schemas']['NoticeAnswer'];
export type NewSafetyNotice = components['schemas']['NewSafetyNotice'];
export type NewNoticeAnswer = components['schemas']['NewNoticeAnswer'];

export const noticesQuery = (state: NoticeState | undefined) =>
  queryOptions({
    queryKey: ['notices', state ?? 'all'],
    queryFn: ({ signal }): Promise<SafetyNotice[]> =>
      everyPage((cursor) =>
        answer(
          api.GET('/v1/safety-notices', {
            params: { query: { limit: 200, ...(state && { state }), ...(cursor && { cursor }) } },
            signal,
          }),
        ),
      ),
  });

export const noticeQuery = (noticeId: string) =>
  queryOptions({
    queryKey: ['notice', noticeId],
    queryFn: ({ signal }) =>
      answer(api.GET('/v1/safety-notices/{noticeId}', { params: { path: { noticeId } }, signal })),
  });

export const noticeItemsQuery = (noticeId: string) =>
  queryOptions({
    queryKey: ['notice', noticeId, 'items'],
    queryFn: ({ signal }): Promise<NoticeItem[]> =>
      everyPage((cursor) =>
        answer(
          api.GET('/v1/safety-notices/{noticeId}/items', {
            params: { path: { noticeId }, query: { limit: 200, ...(cursor && { cursor }) } },
            signal,
          }),
        ),
      ),
  });

/** What a notice would find; nothing is written, so it is asked again whenever what is typed has changed. */
export const matchesQuery = (body: NewSafetyNotice) =>
  queryOptions({
    queryKey: ['notice-matches', body],
    queryFn: ({ signal }) => answer(api.POST('/v1/safety-notices/matches', { body, signal })),
    retry: false,
  });
