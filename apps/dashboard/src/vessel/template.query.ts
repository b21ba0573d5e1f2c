import { answer, everyPage } from '@garboard/client/client.ts';
import type { components } from '@garboard/client/generated/api.d.ts';
import { queryOptions } from '@tanstack/react-query';
import { api } from '../api/client.ts';
import { FOR_GOOD } from '../item/catalogue.query.ts';

export type Template = components['schemas']['VesselTemplate'];

export const templatesQuery = () =>
  queryOptions({
    queryKey: ['vessel-templates'],
    queryFn: ({ signal }): Promise<Template[]> =>
      everyPage((cursor) =>
        answer(
          api.GET('/v1/vessel-templates', { params: { query: { limit: 200, ...(cursor && { cursor }) } }, signal }),
        ),
      ),
    ...FOR_GOOD,
  });
