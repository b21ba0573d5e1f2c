/** Who works here and who is invited: what is asked, and what is done. */
import { answer, everyPage } from '@garboard/client/client.ts';
import type { components } from '@garboard/client/generated/api.d.ts';
import { queryOptions } from '@tanstack/react-query';
import { api } from '../api/client.ts';
import { told } from './account.query.ts';

type Schemas = components['schemas'];
export type Person = Schemas['Person'];
export type Invitation = Schemas['Invitation'];
export type Granted = { readonly role: Schemas['RoleCode']; readonly vesselIds: readonly string[] | null };

export const peopleQuery = () =>
  queryOptions({
    queryKey: ['people'],
    queryFn: ({ signal }): Promise<Person[]> =>
      everyPage((cursor) =>
        answer(api.GET('/v1/people', { params: { query: { limit: 200, ...(cursor && { cursor }) } }, signal })),
      ),
  });

export const invitationsQuery = () =>
  queryOptions({
    queryKey: ['invitations'],
    queryFn: ({ signal }): Promise<Invitation[]> =>
      everyPage((cursor) =>
        answer(api.GET('/v1/invitations', { params: { query: { limit: 200, ...(cursor && { cursor }) } }, signal })),
      ),
  });

const headers = (version: number, key: string) => ({ 'If-Match': `"${version}"`, 'Idempotency-Key': key });

export const changePerson = ({ id, version }: Person, { role, vesselIds }: Granted, key: string) =>
  answer(
    api.PATCH('/v1/people/{personId}', {
      params: { path: { personId: id }, header: headers(version, key) },
      body: { role, vesselIds: vesselIds && [...vesselIds] },
    }),
  );

export const removePerson = ({ id, version }: Person, reason: string, key: string) =>
  told(
    api.POST('/v1/people/{personId}/removal', {
      params: { path: { personId: id }, header: headers(version, key) },
      body: { reason },
    }),
  );

export const invite = (email: string, { role, vesselIds }: Granted, key: string) =>
  answer(
    api.POST('/v1/invitations', {
      params: { header: { 'Idempotency-Key': key } },
      body: { email, role, ...(vesselIds && { vesselIds: [...vesselIds] }) },
    }),
  );

export const withdrawInvitation = ({ id, version }: Invitation, key: string) =>
  told(
    api.POST('/v1/invitations/{invitationId}/withdrawal', {
      params: { path: { invitationId: id }, header: headers(version, key) },
      body: {},
    }),
  );
