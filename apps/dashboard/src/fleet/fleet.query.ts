import { answer } from '@garboard/client/client.ts';
import type { components } from '@garboard/client/generated/api.d.ts';
import { queryOptions } from '@tanstack/react-query';
import { api } from '../api/client.ts';

export type Fleet = components['schemas']['Fleet'];
export type FleetRow = components['schemas']['FleetRow'];

export const openFindings = ({ findings }: FleetRow): number =>
  Object.values(findings).reduce((sum, count) => sum + count, 0);

/** Two years and a day: as far as the horizon is ever drawn. */
const HORIZON_DAYS = 732;

/** The whole register with its standings and marks: a fleet is some hundreds of boats at most. */
export const fleetQuery = (asOf: string | undefined) =>
  queryOptions({
    queryKey: ['fleet', asOf ?? 'today'],
    queryFn: async ({ signal }): Promise<Fleet> => {
      const query = { horizonDays: HORIZON_DAYS, limit: 200, ...(asOf && { asOf }) };
      const page = (cursor?: string) =>
        answer(api.GET('/v1/fleet', { params: { query: { ...query, ...(cursor && { cursor }) } }, signal }));
      let last = await page();
      const items = [...last.items];
      while (last.nextCursor !== null) {
        last = await page(last.nextCursor);
        items.push(...last.items);
      }
      return { ...last, items };
    },
  });
