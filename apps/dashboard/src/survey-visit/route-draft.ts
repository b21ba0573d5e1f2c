/** A route while it is changed: places moved, renamed, taken out and added. */
import type { components } from '@garboard/client/generated/api.d.ts';

export type Place = components['schemas']['RouteZone'];

export const moved = (places: readonly Place[], from: number, by: -1 | 1): Place[] => {
  const to = from + by;
  const place = places[from];
  if (!place || to < 0 || to >= places.length) return [...places];
  return places.toSpliced(from, 1).toSpliced(to, 0, place);
};

export const renamed = (places: readonly Place[], at: number, name: string): Place[] =>
  places.map((place, index) => (index === at ? { ...place, name } : place));

/** A place of one's own gets a code from its name; `null` where the name makes none, or it stands there already. */
export function added(places: readonly Place[], name: string): Place[] | null {
  const zone = name
    .trim()
    .toLowerCase()
    .normalize('NFD')
    .replaceAll(/[^a-z0-9]+/g, '_')
    .replaceAll(/^[_0-9]+|_+$/g, '')
    .slice(0, 40);
  if (zone === '' || places.some((place) => place.zone === zone)) return null;
  return [...places, { zone, name: name.trim() }];
}
