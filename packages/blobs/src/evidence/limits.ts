/** How much a file may ask of whoever opens it. House convention, no source, except where said. */

/** Telephones take up to 50 megapixels in ordinary use. */
export const MAX_PIXELS = 50_000_000;

/** The longer side. JPEG itself ends at 65,535. */
export const MAX_SIDE = 16_384;

/** Shorter to longer side: a panorama is 1 to 10 at most; a strip is no photograph. */
export const MAX_RATIO = 20;

/** What comes out of one byte: JPEG cannot reach 100; a picture that unfolds further is a trap, not a photograph. */
export const MAX_PIXELS_PER_BYTE = 500;
/** Small drawings may be as flat as they like. */
export const PIXELS_FREE_OF_RATIO = 2_000_000;

/** What may be spent on one picture. */
export const SECONDS_PER_PICTURE = 10;

/** The longer side of what is shown. */
export const SIDES = { large: 1600, small: 360 } as const;
export type Size = keyof typeof SIDES;
