/** Survey visits: what is asked of the API, and what is done. */
import { answer, everyPage } from '@garboard/client/client.ts';
import type { components } from '@garboard/client/generated/api.d.ts';
import { queryOptions } from '@tanstack/react-query';
import { api } from '../api/client.ts';
import { versioned } from '../api/versioned.ts';

type Schemas = components['schemas'];
export type Visit = Schemas['Visit'];
export type Walk = Schemas['Walk'];
export type Stop = Schemas['RouteStop'];
export type NewVisit = Schemas['NewVisit'];
export type VisitChange = Schemas['VisitChange'];

export const visitsQuery = (vesselId?: string) =>
  queryOptions({
    queryKey: ['visits', vesselId ?? 'all'],
    queryFn: ({ signal }): Promise<Visit[]> =>
      everyPage((cursor) =>
        answer(
          api.GET('/v1/visits', {
            params: { query: { limit: 200, ...(vesselId && { vesselId }), ...(cursor && { cursor }) } },
            signal,
          }),
        ),
      ),
  });

export const visitQuery = (visitId: string) =>
  queryOptions({
    queryKey: ['visit', visitId],
    queryFn: ({ signal }) => versioned(api.GET('/v1/visits/{visitId}', { params: { path: { visitId } }, signal })),
  });

export const walkQuery = (visitId: string) =>
  queryOptions({
    queryKey: ['visit', visitId, 'walk'],
    queryFn: ({ signal }) => answer(api.GET('/v1/visits/{visitId}/walk', { params: { path: { visitId } }, signal })),
  });

export const sealedQuery = (visitId: string) =>
  queryOptions({
    queryKey: ['visit', visitId, 'sealed'],
    queryFn: ({ signal }) =>
      answer(api.GET('/v1/visits/{visitId}/sealed-copy', { params: { path: { visitId } }, signal })),
  });

export type Craft = Visit['craft'];

export const routeQuery = (craft: Craft) =>
  queryOptions({
    queryKey: ['survey-route', craft],
    queryFn: ({ signal }) => versioned(api.GET('/v1/survey-routes/{craft}', { params: { path: { craft } }, signal })),
  });

export const setRoute = (craft: Craft, zones: readonly Schemas['RouteZone'][], version: string) =>
  answer(
    api.PUT('/v1/survey-routes/{craft}', {
      params: { path: { craft }, header: { 'If-Match': version } },
      body: { zones: [...zones] },
    }),
  );

export const startVisit = (vesselId: string, body: NewVisit, once: string): Promise<Visit> =>
  answer(
    api.POST('/v1/vessels/{vesselId}/visits', {
      params: { path: { vesselId }, header: { 'Idempotency-Key': once } },
      body,
    }),
  );

/** One line of a place. */
export type Line =
  | { readonly kind: 'zone'; readonly body: Schemas['NewZoneAnswer'] }
  | { readonly kind: 'finding'; readonly vesselId: string; readonly body: Schemas['NewFinding'] }
  | { readonly kind: 'limitation'; readonly body: Schemas['NewLimitation'] }
  | { readonly kind: 'reading'; readonly body: Schemas['NewReading'] }
  | { readonly kind: 'referral'; readonly body: Schemas['NewReferral'] };

export async function writeLine(visitId: string, line: Line, once: string): Promise<void> {
  const params = { path: { visitId }, header: { 'Idempotency-Key': once } };
  switch (line.kind) {
    case 'zone':
      await answer(api.POST('/v1/visits/{visitId}/zones', { params, body: line.body }));
      return;
    case 'finding':
      await answer(
        api.POST('/v1/vessels/{vesselId}/findings', {
          params: { path: { vesselId: line.vesselId }, header: { 'Idempotency-Key': once } },
          body: line.body,
        }),
      );
      return;
    case 'limitation':
      await answer(api.POST('/v1/visits/{visitId}/limitations', { params, body: line.body }));
      return;
    case 'reading':
      await answer(api.POST('/v1/visits/{visitId}/readings', { params, body: line.body }));
      return;
    case 'referral':
      await answer(api.POST('/v1/visits/{visitId}/referrals', { params, body: line.body }));
      return;
  }
}

export const answerLimitation = (
  limitationId: string,
  version: number,
  body: Schemas['NewLimitationAnswer'],
  once: string,
) =>
  answer(
    api.POST('/v1/limitations/{limitationId}/answers', {
      params: { path: { limitationId }, header: { 'If-Match': `"${version}"`, 'Idempotency-Key': once } },
      body,
    }),
  );

export const changeVisit = (visitId: string, body: VisitChange, version: string): Promise<Visit> =>
  answer(api.PATCH('/v1/visits/{visitId}', { params: { path: { visitId }, header: { 'If-Match': version } }, body }));

export const completeVisit = (visitId: string, version: string, completedOn: string, once: string): Promise<Visit> =>
  answer(
    api.POST('/v1/visits/{visitId}/completion', {
      params: { path: { visitId }, header: { 'If-Match': version, 'Idempotency-Key': once } },
      body: { completedOn },
    }),
  );

export const addAddendum = (visitId: string, body: Schemas['NewAddendum'], once: string) =>
  answer(
    api.POST('/v1/visits/{visitId}/addenda', {
      params: { path: { visitId }, header: { 'Idempotency-Key': once } },
      body,
    }),
  );
