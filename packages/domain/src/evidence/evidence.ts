/** Photographs and papers that show something: what is said of each, apart from its bytes. */

type IsoDay = string;

/** What a file is kept with. `point`: a survey point of the place, named the same at every visit. */
export type EvidenceSaid = {
  readonly words: string | null;
  readonly zone: string | null;
  readonly point: string | null;
  readonly visitId: string | null;
  /** The day on which it was taken, at the vessel's place. */
  readonly takenOn: IsoDay;
};

/** A file that has arrived: kept for good, or refused; `because` completes "the file …". */
export type Fate =
  | { readonly kind: 'receiving' }
  | { readonly kind: 'kept'; readonly evidenceId: string }
  | { readonly kind: 'refused'; readonly because: string };

/** What more a file lacks. `piece` is what came now, in bytes. */
export function pieceFault(file: { readonly bytes: number; readonly received: number }, piece: number): string | null {
  if (piece === 0) return file.received === file.bytes ? null : 'is empty';
  const left = file.bytes - file.received;
  return piece > left ? `has ${piece} bytes, and the file lacks only ${left}` : null;
}
