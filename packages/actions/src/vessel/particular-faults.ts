/** What no schema can see: zones that do not exist, boats built in the future. */
import type { Particulars } from '@garboard/db/vessel/vessel-record.ts';
import { isTimeZone } from '@garboard/domain/calendar/day-in-zone.ts';
import type { Fault } from '../result.ts';

export function particularFaults({ timeZone, builtYear }: Particulars, now: Date): Fault[] {
  const faults: Fault[] = [];
  if (!isTimeZone(timeZone))
    faults.push({ pointer: '/timeZone', detail: 'must be an IANA time zone such as Europe/Oslo' });
  if (builtYear !== null && builtYear > now.getUTCFullYear() + 2)
    faults.push({ pointer: '/builtYear', detail: 'lies in the future' });
  return faults;
}
