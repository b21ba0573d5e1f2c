/**
 * What a file is, by its content alone, and pictures of it that are safe to show: drawn anew, so that neither
 * position nor serial number nor anything hidden behind the picture comes along.
 */
import { fileTypeFromBuffer } from 'file-type';
import sharp, { type Sharp } from 'sharp';
import {
  MAX_PIXELS,
  MAX_PIXELS_PER_BYTE,
  MAX_RATIO,
  MAX_SIDE,
  PIXELS_FREE_OF_RATIO,
  SECONDS_PER_PICTURE,
  SIDES,
  type Size,
} from './limits.ts';
import { oneAtATime } from './one-at-a-time.ts';

/** What is kept but not shown here: a telephone's own format that cannot be opened, and papers. */
const KEPT_AS_IT_IS = ['image/heic', 'application/pdf'] as const;
/** What is shown, and the name that the library gives it. */
const SHOWN = { 'image/jpeg': 'jpeg', 'image/png': 'png', 'image/webp': 'webp', 'image/avif': 'heif' } as const;

export type MediaType = keyof typeof SHOWN | (typeof KEPT_AS_IT_IS)[number];
/** JPEG, by size. */
export type Views = Readonly<Record<Size, Uint8Array>>;
export type Inspected =
  | {
      readonly kind: 'picture';
      readonly mediaType: MediaType;
      readonly widthPx: number;
      readonly heightPx: number;
      readonly views: Views;
    }
  | { readonly kind: 'kept_as_it_is'; readonly mediaType: MediaType }
  /** `because` completes "the file …". */
  | { readonly kind: 'refused'; readonly because: string };

sharp.cache(false);
sharp.concurrency(1);
// Loaders of other formats are never reached, whatever a file pretends to be.
sharp.block({ operation: ['VipsForeignLoad'] });
sharp.unblock({
  operation: ['Jpeg', 'Png', 'Webp', 'Heif'].map((format) => `VipsForeignLoad${format}Buffer`),
});

const inTurn = oneAtATime();

/** One picture at a time is unfolded in memory, however many come at once. */
export async function inspect(bytes: Uint8Array): Promise<Inspected> {
  const mediaType = (await fileTypeFromBuffer(bytes))?.mime;
  if (mediaType !== undefined && isOneOf(KEPT_AS_IT_IS, mediaType)) return { kind: 'kept_as_it_is', mediaType };
  if (mediaType === undefined || !isShown(mediaType)) return { kind: 'refused', because: NO_KIND };
  return inTurn(() => draw(bytes, mediaType));
}

const NO_KIND = 'is no photograph (JPEG, PNG, WebP, AVIF, HEIC) and no PDF';
const BROKEN = 'is broken or cut short: it cannot be opened';

async function draw(bytes: Uint8Array, mediaType: keyof typeof SHOWN): Promise<Inspected> {
  // The header alone is read here, so that what is too large can be said to be.
  const told = await sharp(bytes, { limitInputPixels: false })
    .metadata()
    .catch(() => null);
  if (told?.format !== SHOWN[mediaType]) return { kind: 'refused', because: told ? NO_KIND : BROKEN };
  const { width, height } = told.autoOrient;
  const because = tooMuch(width, height, bytes.length);
  if (because !== null) return { kind: 'refused', because };
  const picture = sharp(bytes, { limitInputPixels: MAX_PIXELS, failOn: 'error', sequentialRead: true, pages: 1 });
  try {
    const large = await shown(picture, SIDES.large);
    const small = await shown(sharp(large), SIDES.small);
    return { kind: 'picture', mediaType, widthPx: width, heightPx: height, views: { large, small } };
  } catch {
    return { kind: 'refused', because: BROKEN };
  }
}

function shown(picture: Sharp, side: number): Promise<Buffer> {
  return picture
    .autoOrient()
    .resize({ width: side, height: side, fit: 'inside', withoutEnlargement: true })
    .flatten({ background: '#ffffff' })
    .toColourspace('srgb')
    .jpeg({ quality: 82 })
    .timeout({ seconds: SECONDS_PER_PICTURE })
    .toBuffer();
}

function tooMuch(width: number, height: number, bytes: number): string | null {
  const [short, long] = [Math.min(width, height), Math.max(width, height)];
  const pixels = width * height;
  if (long > MAX_SIDE || pixels > MAX_PIXELS) return `has ${width} by ${height} pixels, which is too many`;
  if (long > short * MAX_RATIO) return `is a strip of ${width} by ${height} pixels, not a photograph`;
  const isTrap = pixels > PIXELS_FREE_OF_RATIO && pixels > bytes * MAX_PIXELS_PER_BYTE;
  return isTrap ? `unfolds to ${width} by ${height} pixels out of ${bytes} bytes, which no photograph does` : null;
}

const isShown = (mediaType: string): mediaType is keyof typeof SHOWN => Object.hasOwn(SHOWN, mediaType);
const isOneOf = <T extends string>(some: readonly T[], text: string): text is T => some.some((each) => each === text);
