/** Makes a photograph of a drawing: a little out of focus, with grain, as JPEG. The same drawing always comes out the same. */
import sharp from 'sharp';
import { type Random, randomOf } from '../random.ts';
import { drawn, PHOTOGRAPH, type Shot } from './scenes.ts';

const SVG = { operation: ['VipsForeignLoadSvgBuffer'] };

/** Few enough to be drawn while somebody waits, enough that not every boat has the same hose. */
const VARIANTS = 2;

const known = new Map<string, Promise<Buffer>>();

/** `year`: when it is taken. */
export function photographOf(thing: Omit<Shot, 'year'>, year: number, chance: Random): Promise<Buffer> {
  const variant = thing.scene === 'gauge' ? 1 : chance.between(1, VARIANTS);
  const shot = { ...thing, year: printedYear(thing, year, variant) };
  const key = JSON.stringify([shot, variant]);
  const there = known.get(key) ?? develop(shot, key);
  known.set(key, there);
  return there;
}

/** What hardens was made long ago, what is new this year; on most things nothing is printed. */
function printedYear({ scene, mended }: Omit<Shot, 'year'>, year: number, variant: number): number {
  if (scene === 'gauge') return year;
  if (scene !== 'hose') return 0;
  return mended ? year : 2012 + variant;
}

async function develop(shot: Shot, key: string): Promise<Buffer> {
  const svg = Buffer.from(drawn(shot, randomOf(key)));
  // Whoever looks at what people send in has shut this loader. These drawings are our own.
  const flat = await oneAtATime(() => sharp(svg).blur(0.8).removeAlpha().raw().toBuffer());
  const grain = randomOf(`${key} grain`);
  for (let at = 0; at < flat.length; at += 3) {
    const lighter = grain.between(-14, 14);
    for (let channel = at; channel < at + 3; channel++) flat[channel] = clamp((flat[channel] ?? 0) + lighter);
  }
  return sharp(flat, { raw: { ...PHOTOGRAPH, channels: 3 } })
    .jpeg({ quality: 74 })
    .toBuffer();
}

let before: Promise<unknown> = Promise.resolve();

/** SVG is let in for one drawing at a time: whoever ends first would shut it to one that is still being opened. */
function oneAtATime(draw: () => Promise<Buffer>): Promise<Buffer> {
  const drawing = before.then(async () => {
    sharp.unblock(SVG);
    return draw().finally(() => sharp.block(SVG));
  });
  before = drawing.catch(() => undefined);
  return drawing;
}

const clamp = (value: number) => Math.min(255, Math.max(0, value));
