/** The administration behind three maritime identification digits. */
import { MID_TABLE, ONLY_IN_NEWER_TABLE } from './maritime-identification-digits.ts';

export type Country = {
  readonly mid: number;
  /** `null` where our table does not know the digits. */
  readonly name: string | null;
  /** For a territory, the state that it belongs to. */
  readonly partOf: string | null;
  readonly doubts: readonly string[];
};

type Named = { readonly name: string; readonly partOf: string | null };

const BY_MID = new Map<number, Named>(
  MID_TABLE.flatMap(([name, mids, partOf]) => mids.map((mid) => [mid, { name, partOf: partOf ?? null }] as const)),
);
const BY_NAME = new Map<string, Named>(
  MID_TABLE.map(([name, , partOf]) => [name.toLowerCase(), { name, partOf: partOf ?? null }]),
);

/** Recommendation ITU-R M.585: the digits begin with 2 to 7. `null` outside of that. */
export function countryOfMid(mid: number): Country | null {
  if (mid < 200 || mid > 799) return null;
  const named = BY_MID.get(mid);
  if (!named) {
    return { mid, name: null, partOf: null, doubts: [`The digits ${mid} are in no table of countries that we have.`] };
  }
  const doubts = ONLY_IN_NEWER_TABLE.has(mid)
    ? [`Only one of our two tables knows the digits ${mid}: it gives them to ${named.name}.`]
    : [];
  return { mid, ...named, doubts };
}

/** `338 (United States of America)`. */
export function countryInWords({ mid, name }: Country): string {
  return `${mid} (${name ?? 'country not known to us'})`;
}

/** Whether two names stand for one flag: the same name, or a territory and its state. `null`: a name we do not know. */
export function sameFlag(one: string, other: string): boolean | null {
  const [a, b] = [BY_NAME.get(one.trim().toLowerCase()), BY_NAME.get(other.trim().toLowerCase())];
  if (!a || !b) return null;
  return a.name === b.name || a.partOf === b.name || b.partOf === a.name;
}
