/** What a vessel of a sort carries, before the stories that are her own. */
import { dinghy, keelboat, openBoat, safetyBoat, smallSailingBoat, trapezeDinghy } from './small-craft.ts';
import { cruisingYacht, motorBoat, racingBoat, sailingBoat, trainingKetch, visitingYacht } from './yachts.ts';

export type Inventory = keyof typeof INVENTORIES;

export const INVENTORIES = {
  dinghy,
  trapezeDinghy,
  keelboat,
  safetyBoat,
  cruisingYacht,
  openBoat,
  smallSailingBoat,
  sailingBoat,
  visitingYacht,
  trainingKetch,
  motorBoat,
  racingBoat,
} as const;
