import { formatDay } from './calendar.ts';

export function Day({ on }: { on: string }) {
  return <time dateTime={on}>{formatDay(on)}</time>;
}
