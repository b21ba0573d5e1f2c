/** What is written of an attendance, held against itself. */
import type { VisitDetail } from '@garboard/db/survey-visit/visit-record.ts';
import type { Fault } from '../result.ts';

export function detailFaults({ water, ashoreSince, instruments }: VisitDetail, startedOn: string): Fault[] {
  const keys = instruments.map(({ key }) => key);
  const twice = keys.flatMap((key, index) => (keys.indexOf(key) < index ? [index] : []));
  return [
    ...(ashoreSince !== null && water === 'afloat'
      ? [{ pointer: '/ashoreSince', detail: 'does not go with afloat' }]
      : []),
    ...(ashoreSince !== null && ashoreSince > startedOn
      ? [{ pointer: '/ashoreSince', detail: 'lies after the day of the visit' }]
      : []),
    ...twice.map((index) => ({ pointer: `/instruments/${index}/key`, detail: 'names another instrument already' })),
  ];
}
