/** A boat to find something aboard: a cracked hose that cannot wait, and a slow drain that can. */
import type { Finding } from '@garboard/contract/finding/finding.ts';
import type { Client } from './api.ts';
import { aVessel } from './vessels.ts';

export const HOSE = {
  zone: 'gas_installation',
  what: 'Gas hose at the cooker cracked where it bends',
  hazard: 'fire_and_gas',
  urgency: 'before_use',
  on: '2026-11-20',
};
export const DRAIN = {
  zone: 'gas_locker',
  what: 'Drain runs slowly',
  hazard: 'fire_and_gas',
  urgency: 'within_weeks',
  on: '2026-11-20',
};

export async function aBoat(client: Client) {
  const vessel = await aVessel(client.organisation.ctx(), ['common_practice', 'us_recreational'], 'Marsh Harrier');
  const enter = async (finding: object = HOSE) =>
    (await client.post<Finding>(`/v1/vessels/${vessel.id}/findings`, finding)).body;
  return { vessel, enter };
}
