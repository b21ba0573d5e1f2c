/** The limits of an own rule, each with the box in which it is typed. */
import type { components } from '@garboard/client/generated/api.d.ts';
import { periodToType, readPeriod } from '../ui/read-period.ts';

type Limit = components['schemas']['OwnLimit'];
type Event = Extract<Limit, { kind: 'before_event' }>['event'];
export type LimitBox = 'lastDone' | 'installed' | 'manufactured' | 'printed' | 'hours' | 'within';
/** `printed`: `yes` or empty. */
export type LimitBoxes = Readonly<Record<LimitBox | 'event', string>>;

const INTERVALS = [
  { box: 'lastDone', from: 'last_done' },
  { box: 'installed', from: 'installed' },
  { box: 'manufactured', from: 'manufactured' },
] as const;

/** Those that are filled in. A length of time that cannot be read is left out: its box says so. */
export function limitsOf(boxes: LimitBoxes): { readonly box: LimitBox; readonly limit: Limit }[] {
  const within = readPeriod(boxes.within);
  return [
    ...INTERVALS.flatMap(({ box, from }) => {
      const plus = readPeriod(boxes[box]);
      return plus ? [{ box, limit: { kind: 'interval' as const, from, plus } }] : [];
    }),
    ...(boxes.printed === 'yes' ? [{ box: 'printed' as const, limit: { kind: 'printed_expiry' as const } }] : []),
    ...(/^\d+$/.test(boxes.hours.trim())
      ? [{ box: 'hours' as const, limit: { kind: 'running_hours' as const, hours: Number(boxes.hours) } }]
      : []),
    ...(within
      ? [{ box: 'within' as const, limit: { kind: 'before_event' as const, event: boxes.event as Event, within } }]
      : []),
  ];
}

export const NO_LIMITS: LimitBoxes = {
  lastDone: '',
  installed: '',
  manufactured: '',
  printed: '',
  hours: '',
  within: '',
  event: 'race_start',
};

/** The boxes as they were filled in, and the limits that no box is left for. */
export function boxesOf(limits: readonly Limit[]): { readonly boxes: LimitBoxes; readonly more: Limit[] } {
  const boxes = { ...NO_LIMITS };
  const more: Limit[] = [];
  for (const limit of limits) {
    switch (limit.kind) {
      case 'interval':
        boxes[INTERVALS.find(({ from }) => from === limit.from)?.box ?? 'lastDone'] = periodToType(limit.plus);
        break;
      case 'printed_expiry':
        boxes.printed = 'yes';
        break;
      case 'running_hours':
        boxes.hours = String(limit.hours);
        break;
      case 'before_event':
        if (boxes.within !== '') more.push(limit);
        else Object.assign(boxes, { within: periodToType(limit.within), event: limit.event });
        break;
    }
  }
  return { boxes, more };
}
