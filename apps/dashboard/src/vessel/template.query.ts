import { queryOptions } from '@tanstack/react-query';
import { answer, api, everyPage } from '../api/client.ts';
import type { components } from '../generated/api.d.ts';
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
