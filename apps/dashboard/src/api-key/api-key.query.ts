/** The keys of programs: what is asked, and what is done. */
import { answer, everyPage } from '@garboard/client/client.ts';
import type { components } from '@garboard/client/generated/api.d.ts';
import { queryOptions } from '@tanstack/react-query';
import { api } from '../api/client.ts';

type Schemas = components['schemas'];
export type ApiKey = Schemas['ApiKey'];
export type WithText = Schemas['ApiKeyWithText'];
export type NewApiKey = Schemas['NewApiKey'];

export const apiKeysQuery = () =>
  queryOptions({
    queryKey: ['api-keys'],
    queryFn: ({ signal }): Promise<ApiKey[]> =>
      everyPage((cursor) =>
        answer(api.GET('/v1/api-keys', { params: { query: { limit: 200, ...(cursor && { cursor }) } }, signal })),
      ),
  });

export const makeApiKey = (body: NewApiKey, once: string) =>
  answer(api.POST('/v1/api-keys', { params: { header: { 'Idempotency-Key': once } }, body }));

const at = ({ id, version }: ApiKey, once: string) => ({
  path: { keyId: id },
  header: { 'If-Match': `"${version}"`, 'Idempotency-Key': once },
});

export const renewApiKey = (key: ApiKey, body: Schemas['ApiKeyRenewal'], once: string) =>
  answer(api.POST('/v1/api-keys/{keyId}/renewal', { params: at(key, once), body }));

export const revokeApiKey = (key: ApiKey, reason: string, once: string) =>
  answer(
    api.POST('/v1/api-keys/{keyId}/revocation', { params: at(key, once), body: { ...(reason !== '' && { reason }) } }),
  );
