/** One's own account, organisations and session: what is asked, and what is done. */
import { answer, everyPage } from '@garboard/client/client.ts';
import type { components } from '@garboard/client/generated/api.d.ts';
import { queryOptions } from '@tanstack/react-query';
import { api } from '../api/client.ts';

export type Account = components['schemas']['Account'];
export type Belonging = components['schemas']['Belonging'];

export const accountQuery = () =>
  queryOptions({
    queryKey: ['account'],
    queryFn: ({ signal }) => answer(api.GET('/v1/account', { signal })),
  });

export const belongingsQuery = () =>
  queryOptions({
    queryKey: ['belongings'],
    queryFn: ({ signal }): Promise<Belonging[]> =>
      everyPage((cursor) =>
        answer(api.GET('/v1/organisations', { params: { query: { ...(cursor && { cursor }) } }, signal })),
      ),
  });

type Told = { response: Response; error?: unknown; data?: unknown };

/** For what answers nothing (204) when it is done. */
export async function told(request: Promise<Told>): Promise<void> {
  const { response, error } = await request;
  if (!response.ok) await answer(Promise.resolve({ response, error }));
}

export const signOut = () => told(api.POST('/v1/session/end'));
export const endSession = (sessionId: string) =>
  told(api.POST('/v1/account/sessions/{sessionId}/end', { params: { path: { sessionId } } }));
export const endOtherSessions = () => told(api.POST('/v1/account/other-sessions/end'));
export const leaveOrganisation = () => told(api.POST('/v1/organisation/leaving'));
export const eraseAccount = (email: string) => told(api.POST('/v1/account/erasure', { body: { email } }));
export const switchTo = (organisationId: string) =>
  answer(api.POST('/v1/session/organisation', { body: { organisationId } }));
