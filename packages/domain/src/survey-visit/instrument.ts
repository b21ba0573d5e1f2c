/** An instrument as it was brought aboard, and whether it was in check on the day it was read. */
export type Instrument = {
  /** Names it within the visit. */
  readonly key: string;
  readonly maker: string;
  readonly model: string;
  readonly serial: string | null;
  readonly scale: string | null;
  readonly checkedOn: string | null;
  readonly nextCheckOn: string | null;
};

export type Check = 'in_check' | 'out_of_check' | 'unknown';

/** ISO days. Without a day to the next check nobody can say: that is said too. */
export function checkOn({ nextCheckOn }: Pick<Instrument, 'nextCheckOn'>, day: string): Check {
  if (nextCheckOn === null) return 'unknown';
  return day > nextCheckOn ? 'out_of_check' : 'in_check';
}
