/** Files that mean harm, made the same in every run of one seed: what each is, and its bytes. */
import { crc32, deflateRawSync, deflateSync, gzipSync } from 'node:zlib';
import sharp from 'sharp';
import { random } from '../support/random.ts';

export type Hostile = { readonly what: string; readonly bytes: Buffer };

const hostile = (what: string, bytes: Buffer | string): Hostile => ({ what, bytes: Buffer.from(bytes) });
const SCRIPT = '<script>alert(document.domain)</script>';

export async function hostileFiles(seed: number): Promise<Hostile[]> {
  const next = random(seed);
  const good = await goodOnes();
  return [
    ...bombs(),
    ...activeText(),
    ...otherFormats(),
    ...papers(),
    ...polyglots(good),
    ...withHiddenWords(good.jpeg),
    ...truncated(good, next),
    ...flipped(good, next),
  ];
}

type Good = { readonly jpeg: Buffer; readonly png: Buffer; readonly webp: Buffer; readonly avif: Buffer };

async function goodOnes(): Promise<Good> {
  const noise = { type: 'gaussian', mean: 128, sigma: 40 } as const;
  const picture = () => sharp({ create: { width: 160, height: 120, channels: 3, background: 'teal', noise } });
  const [jpeg, png, webp, avif] = await Promise.all([
    picture().jpeg().toBuffer(),
    picture().png().toBuffer(),
    picture().webp().toBuffer(),
    picture().avif().toBuffer(),
  ]);
  return { jpeg, png, webp, avif };
}

function chunk(type: string, data: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const frame = Buffer.alloc(8);
  frame.writeUInt32BE(data.length, 0);
  frame.writeUInt32BE(crc32(body), 4);
  return Buffer.concat([frame.subarray(0, 4), body, frame.subarray(4)]);
}

const PNG_MAGIC = Buffer.from('89504e470d0a1a0a', 'hex');

/** `said` by the header; `rows` are really there. Grey of one bit, or of eight. */
function png(said: { width: number; height: number }, bits: 1 | 8, rows: number, ...more: Buffer[]): Buffer {
  const head = Buffer.alloc(13);
  head.writeUInt32BE(said.width, 0);
  head.writeUInt32BE(said.height, 4);
  head[8] = bits;
  const line = 1 + Math.ceil((said.width * bits) / 8);
  const data = deflateSync(Buffer.alloc(line * rows), { level: 9 });
  return Buffer.concat([PNG_MAGIC, chunk('IHDR', head), ...more, chunk('IDAT', data), chunk('IEND', Buffer.alloc(0))]);
}

/** RFC 2083, 4.2.3: text that is pressed; a hundred megabytes of it out of a hundred kilobytes. */
const textBomb = () =>
  chunk('zTXt', Buffer.concat([Buffer.from('Comment\0\0', 'latin1'), deflateSync(Buffer.alloc(100_000_000))]));

function bombs(): Hostile[] {
  const square = (side: number) => ({ width: side, height: side });
  return [
    ...([1, 8] as const).map((bits) =>
      hostile(`a PNG of 20,000 by 20,000 in ${bits} bits`, png(square(20_000), bits, 20_000)),
    ),
    hostile('a PNG that says 20,000 by 20,000 and has one row', png(square(20_000), 8, 1)),
    hostile('a PNG that says two thousand million by one', png({ width: 2_000_000_000, height: 1 }, 1, 0)),
    hostile('a PNG of nought by nought', png(square(0), 8, 0)),
    ...[9000, 7000, 5000, 3000].map((side) => hostile(`a flat PNG of ${side} by ${side}`, png(square(side), 8, side))),
    hostile('a strip of 16,000 by 1', png({ width: 16_000, height: 1 }, 8, 1)),
    hostile('a column of 1 by 16,000', png({ width: 1, height: 16_000 }, 8, 16_000)),
    hostile('a strip of 60,000 by 2', png({ width: 60_000, height: 2 }, 8, 2)),
    ...[1, 3].map((times) =>
      hostile(
        `a small PNG with ${times} hundred megabytes of text`,
        png(square(64), 8, 64, ...Array.from({ length: times }, textBomb)),
      ),
    ),
    ...jpegHeaders(),
  ];
}

/** ITU-T T.81, B.2.2: a frame's header is all that says how large it is. */
function jpegHeaders(): Hostile[] {
  const sof = (height: number, width: number) => {
    const frame = Buffer.from('ffc00011080000000003012200021101031101', 'hex');
    frame.writeUInt16BE(height, 5);
    frame.writeUInt16BE(width, 7);
    return Buffer.concat([Buffer.from('ffd8', 'hex'), frame, Buffer.from('ffd9', 'hex')]);
  };
  return [
    [65_535, 65_535],
    [20_000, 20_000],
    [0, 500],
    [1, 1],
  ].map(([height = 0, width = 0]) =>
    hostile(`a JPEG of nothing but a header of ${width} by ${height}`, sof(height, width)),
  );
}

function activeText(): Hostile[] {
  const svg = (inside: string, attributes = '') =>
    `<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"${attributes}>${inside}</svg>`;
  const entity = '<?xml version="1.0"?><!DOCTYPE svg [<!ENTITY x SYSTEM "file:///etc/passwd">]>';
  const laughs = `<!DOCTYPE svg [<!ENTITY a "ha">${'bcdefghij'.replaceAll(/./g, (each) => `<!ENTITY ${each} "${`&${String.fromCharCode(each.charCodeAt(0) - 1)};`.repeat(10)}">`)}]>`;
  const svgs = [
    svg(SCRIPT),
    svg('', ' onload="alert(1)"'),
    svg('<foreignObject><body xmlns="http://www.w3.org/1999/xhtml" onload="alert(1)"/></foreignObject>'),
    svg('<a href="javascript:alert(1)"><text y="9">x</text></a>'),
    svg('<image href="http://127.0.0.1:1/x.png"/>'),
    entity + svg('<text>&x;</text>'),
    laughs + svg('<text>&j;</text>'),
    `\ufeff${svg(SCRIPT)}`,
    `   \n\n${svg(SCRIPT)}`,
    `<!-- ${'x'.repeat(5000)} -->${svg(SCRIPT)}`,
    `<?xml-stylesheet href="javascript:alert(1)"?>${svg('')}`,
    svg('<use href="data:image/svg+xml;base64,PHN2Zy8+#x"/>'),
  ].map((text, at) => hostile(`an SVG that acts (${at + 1})`, text));
  const pages = [
    `<!doctype html>${SCRIPT}`,
    `<html><body onload=alert(1)>`,
    `GIF89a/*${SCRIPT}*/=1;`,
    `GIF87a\0\0\0\0${SCRIPT}`,
    `BM${SCRIPT}`,
    `%!PS-Adobe-3.0\n${SCRIPT}`,
    `MIME-Version: 1.0\nContent-Type: text/html\n\n${SCRIPT}`,
    `#!/bin/sh\nrm -rf /\n`,
    `<?php system($_GET[0]); ?>`,
    `javascript:alert(1)`,
    '../../../../etc/passwd',
    'x'.repeat(40),
  ].map((text, at) => hostile(`a page or script (${at + 1})`, text));
  const fakes = [
    'ffd8ffe0',
    'ffd8ffdb',
    '89504e470d0a1a0a',
    '52494646000000005745425056503820',
    '0000001c6674797061766966',
  ].map((magic) =>
    hostile(`a page that begins as ${magic}`, Buffer.concat([Buffer.from(magic, 'hex'), Buffer.from(SCRIPT)])),
  );
  return [...svgs, ...pages, ...fakes, hostile('a pressed SVG', gzipSync(svg(SCRIPT)))];
}

function otherFormats(): Hostile[] {
  const heads: readonly (readonly [string, string])[] = [
    ['a Windows program', '4d5a90000300000004000000ffff0000'],
    ['a Linux program', '7f454c4602010100'],
    ['a GIF', '47494638396101000100800000ffffff00000021f90400000000002c00000000010001000002024401003b'],
    ['a TIFF', '49492a0008000000'],
    ['a bitmap', '424d46000000000000003600000028000000'],
    ['an icon', '00000100010010100000010020006804000016000000'],
    ['a Photoshop file', '384250530001000000000000'],
    ['a film', '000000186674797069736f6d0000020069736f6d'],
    ['a sound', '494433030000000000'],
    ['an OLE document', 'd0cf11e0a1b11ae1'],
    ['a RAR', '526172211a0700'],
    ['a JPEG XL', 'ff0a'],
    ['a JPEG 2000', '0000000c6a5020200d0a870a'],
    ['an EPS', 'c5d0d3c6'],
    ['a WMF', 'd7cdc69a'],
    ['a Java class', 'cafebabe00000034'],
    ['a font', '774f4646'],
    ['a database', '53514c69746520666f726d6174203300'],
  ];
  const padded = heads.map(([what, head]) =>
    hostile(what, Buffer.concat([Buffer.from(head, 'hex'), Buffer.alloc(500)])),
  );
  return [...padded, hostile('a zip that unfolds to a hundred megabytes', zip(Buffer.alloc(100_000_000)))];
}

/** One entry whose name leads out of where it is unpacked. */
function zip(content: Buffer): Buffer {
  const name = Buffer.from('../../../evil.html');
  const packed = deflateRawSync(content);
  const head = Buffer.alloc(30);
  head.writeUInt32LE(0x04034b50, 0);
  head.writeUInt16LE(20, 4);
  head.writeUInt16LE(8, 8);
  head.writeUInt32LE(crc32(content), 14);
  head.writeUInt32LE(packed.length, 18);
  head.writeUInt32LE(content.length, 22);
  head.writeUInt16LE(name.length, 26);
  return Buffer.concat([head, name, packed]);
}

function papers(): Hostile[] {
  const pdf = (inside: string) => `%PDF-1.7\n1 0 obj<</Type/Catalog${inside}>>endobj\ntrailer<</Root 1 0 R>>\n%%EOF`;
  return [
    pdf('/OpenAction<</S/JavaScript/JS(app.alert(1))>>'),
    pdf('/OpenAction<</S/Launch/F(cmd.exe)>>'),
    pdf('/OpenAction<</S/URI/URI(http://127.0.0.1/)>>'),
    pdf('/Names<</EmbeddedFiles 2 0 R>>'),
    `%PDF-1.4\n${SCRIPT}`,
    `%PDF-\n<html>${SCRIPT}</html>`,
  ].map((text, at) => hostile(`a PDF that acts (${at + 1})`, text));
}

const TAILS: Readonly<Record<string, Buffer>> = {
  'a page': Buffer.from(`<html>${SCRIPT}</html>`),
  'a script': Buffer.from('*/=1;alert(1)//'),
  'a server’s program': Buffer.from('<?php system($_GET[0]); ?>'),
  'an archive': zip(Buffer.from(SCRIPT)),
  'an SVG': Buffer.from(`<svg xmlns="http://www.w3.org/2000/svg">${SCRIPT}</svg>`),
};

/** Pictures that are something else besides. */
const polyglots = (good: Good): Hostile[] =>
  Object.entries(good).flatMap(([format, picture]) =>
    Object.entries(TAILS).map(([what, tail]) =>
      hostile(`a picture (${format}) with ${what} behind it`, Buffer.concat([picture, tail])),
    ),
  );

/** Words where a picture may carry them. */
function withHiddenWords(jpeg: Buffer): Hostile[] {
  const segment = (marker: number, text: string) => {
    const body = Buffer.from(text, 'latin1');
    const head = Buffer.from([0xff, marker, 0, 0]);
    head.writeUInt16BE(body.length + 2, 2);
    return Buffer.concat([jpeg.subarray(0, 2), head, body, jpeg.subarray(2)]);
  };
  const long = SCRIPT.repeat(1500).slice(0, 65_000);
  return [
    ...[0xfe, 0xe1, 0xe2, 0xed, 0xee].map((marker) =>
      hostile(`a JPEG with words in segment ${marker.toString(16)}`, segment(marker, SCRIPT)),
    ),
    hostile('a JPEG with a long comment', segment(0xfe, long)),
    hostile(
      'a JPEG with a broken table of tags',
      segment(0xe1, `Exif\0\0MM\0*\0\0\0\x08\xff\xff${'\xff'.repeat(200)}`),
    ),
    hostile('a JPEG whose tags lead in a circle', segment(0xe1, 'Exif\0\0MM\0*\0\0\0\x08\0\0\0\0\0\x08')),
  ];
}

const truncated = (good: Good, next: (below: number) => number): Hostile[] =>
  Object.entries(good).flatMap(([format, picture]) =>
    Array.from({ length: 12 }, () => {
      const at = 1 + next(picture.length - 1);
      return hostile(`a ${format} cut after ${at} bytes`, picture.subarray(0, at));
    }),
  );

const flipped = (good: Good, next: (below: number) => number): Hostile[] =>
  Object.entries(good).flatMap(([format, picture]) =>
    Array.from({ length: 15 }, (_, at) => {
      const bytes = Buffer.from(picture);
      for (let times = 0; times <= at; times++) bytes[next(bytes.length)] = next(256);
      return hostile(`a ${format} with ${at + 1} bytes changed`, bytes);
    }),
  );
