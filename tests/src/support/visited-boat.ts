/** A boat that is walked in two places, and short ways to walk her over HTTP. */
import type { Problem } from '@garboard/contract/problem.ts';
import type { Visit } from '@garboard/contract/survey-visit/visit.ts';
import type { Walk } from '@garboard/contract/survey-visit/walk.ts';
import { type Client, match } from './api.ts';
import { TODAY } from './organisation.ts';
import { aVessel } from './vessels.ts';

export const SURVEYOR = { name: 'Ines Vale', capacity: 'surveyor', qualification: 'S-311' };
export const NEW = {
  purpose: 'condition',
  water: 'ashore',
  startedOn: '2026-11-24',
  craft: 'open_boat',
  persons: [SURVEYOR],
};
export const looked = [{ kind: 'looked', words: 'tried twice' }];

export async function aBoat(owner: Client) {
  const vessel = await aVessel(owner.organisation.ctx(), [], 'Marsh Harrier');
  const zones = [
    { zone: 'papers', name: 'Papers' },
    { zone: 'gas_installation', name: 'Gas' },
  ];
  await owner.put('/v1/survey-routes/open_boat', { zones }, match(1));
  const start = async (more: object = {}) =>
    (await owner.post<Visit>(`/v1/vessels/${vessel.id}/visits`, { ...NEW, ...more })).body;
  const sound = (visitId: string, zone: string) => owner.post(`/v1/visits/${visitId}/zones`, { zone, answer: 'sound' });
  const complete = (visitId: string, version = 1) =>
    owner.post<Visit & Problem>(`/v1/visits/${visitId}/completion`, { completedOn: TODAY }, match(version));
  const walk = async (visitId: string) => (await owner.get<Walk>(`/v1/visits/${visitId}/walk`)).body;
  return { vessel, start, sound, complete, walk };
}
