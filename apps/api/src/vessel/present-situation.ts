/** Situations and events as the API shows them. */
import type { Situation, VesselEvent } from '@garboard/contract/vessel/situation.ts';
import type { VesselEventRecord } from '@garboard/db/vessel/events.ts';
import type { SituationRecord } from '@garboard/db/vessel/situations.ts';
import { withoutNulls } from '../request/without-nulls.ts';

export function presentSituation({
  id,
  from,
  place,
  use,
  dismantled,
  underRepair,
  recordedAt,
}: SituationRecord): Situation {
  return { id, from, place, use, dismantled, underRepair, recordedAt };
}

export function presentEvent({ id, event, on, planned, note, recordedAt }: VesselEventRecord): VesselEvent {
  return withoutNulls({ id, event, on, planned, note, recordedAt });
}
