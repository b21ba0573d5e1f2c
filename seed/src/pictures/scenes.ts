/** What the invented photographs show: each a thing found aboard, as it was found or as it is when mended. */
import type { Random } from '../random.ts';
import { arrowTo, chalked, ringed } from './chalk.ts';

/** What the drawings are drawn on; the photographs are smaller. */
const WIDTH = 1120;
const HEIGHT = 840;

/** In pixels. */
export const PHOTOGRAPH = { width: 800, height: 600 } as const;

export const SCENES = ['hose', 'elbow', 'wire', 'blisters', 'inlet', 'gauge'] as const;
export type Scene = (typeof SCENES)[number];

/** `mended`: as it is after the work. `level`: of a gauge, from 0 to 1. `year`: what is printed on it. */
export type Shot = { readonly scene: Scene; readonly mended: boolean; readonly level: number; readonly year: number };

const CHALK = '#f4e04a';
const PENCIL = '#d9342b';

const drawings: Readonly<Record<Scene, (shot: Shot, random: Random) => string>> = {
  hose,
  elbow,
  wire,
  blisters,
  inlet,
  gauge,
};

/** The picture as SVG, without the grain that `develop` gives it. */
export function drawn(shot: Shot, random: Random): string {
  const { scene } = shot;
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${PHOTOGRAPH.width}" height="${PHOTOGRAPH.height}" viewBox="0 0 ${WIDTH} ${HEIGHT}"><defs>${SHADES}</defs>${drawings[scene](shot, random)}<rect width="${WIDTH}" height="${HEIGHT}" fill="url(#edge)"/></svg>`;
}

const SHADES = `
<radialGradient id="edge" cx="0.46" cy="0.42" r="0.8"><stop offset="0.55" stop-opacity="0"/><stop offset="1" stop-opacity="0.55"/></radialGradient>
<linearGradient id="bulkhead" x1="0" y1="0" x2="1" y2="1"><stop stop-color="#b9ad97"/><stop offset="1" stop-color="#8d8371"/></linearGradient>
<linearGradient id="steel" x1="0" y1="0" x2="0" y2="1"><stop stop-color="#6d7174"/><stop offset="0.35" stop-color="#d6dadb"/><stop offset="0.6" stop-color="#9ea3a5"/><stop offset="1" stop-color="#4b4f52"/></linearGradient>
<linearGradient id="bottom" x1="0" y1="0" x2="1" y2="1"><stop stop-color="#7c2f2a"/><stop offset="1" stop-color="#4a1d1c"/></linearGradient>
<linearGradient id="locker" x1="0" y1="0" x2="0" y2="1"><stop stop-color="#5a5f60"/><stop offset="1" stop-color="#2e3233"/></linearGradient>
<radialGradient id="rust"><stop stop-color="#7a3d17"/><stop offset="0.6" stop-color="#a35a22" stop-opacity="0.9"/><stop offset="1" stop-color="#b9732f" stop-opacity="0"/></radialGradient>
<radialGradient id="blister" cx="0.4" cy="0.35"><stop stop-color="#b0625a"/><stop offset="0.7" stop-color="#6a2a27"/><stop offset="1" stop-color="#3a1615"/></radialGradient>
<radialGradient id="dial" cx="0.45" cy="0.4"><stop stop-color="#fbfaf5"/><stop offset="1" stop-color="#d9d5c8"/></radialGradient>`;

const ground = (shade: string) => `<rect width="${WIDTH}" height="${HEIGHT}" fill="url(#${shade})"/>`;

/** Seams, screws and stains: what a wall aboard has on it. */
function wall(shade: string, random: Random): string {
  const seam = random.between(120, 300);
  const screws = Array.from({ length: 4 }, (_, at) => {
    const [x, y] = [80 + at * 320, seam - 26];
    return `<circle cx="${x}" cy="${y}" r="11" fill="#00000055"/><line x1="${x - 7}" y1="${y}" x2="${x + 7}" y2="${y + 3}" stroke="#00000088" stroke-width="3"/>`;
  });
  const stains = Array.from({ length: 5 }, () => {
    const [x, y, long] = [random.between(0, WIDTH), random.between(seam, HEIGHT), random.between(40, 160)];
    return `<ellipse cx="${x}" cy="${y}" rx="${long / 3}" ry="${long}" fill="#2b2417" opacity="0.07"/>`;
  });
  return `${ground(shade)}<line x1="0" y1="${seam}" x2="${WIDTH}" y2="${seam + 10}" stroke="#00000044" stroke-width="6"/>${screws.join('')}${stains.join('')}`;
}

function hose({ mended, year }: Shot, random: Random): string {
  const bend = 'M-40 640 C 260 620 420 560 500 420 S 640 130 1180 150';
  const skin = mended ? '#c8472e' : '#5d4a3f';
  const print = `<g transform="translate(700 196) rotate(-7)">${chalked(`EN ${year}-0${random.between(1, 9)}`, { x: 0, y: 0, size: 34 }, '#efe6d8aa')}</g>`;
  const cracks = Array.from({ length: 9 }, (_, at) => {
    const along = at / 8;
    const [x, y] = [452 + along * 96, 505 - along * 185];
    return `<path d="M${x - 34} ${y - 16} q 30 ${random.between(-8, 8)} 62 ${random.between(24, 40)}" stroke="#16100c" stroke-width="${random.between(3, 7)}" fill="none"/>`;
  });
  const marks =
    ringed(500, 415, 130, 150, CHALK) +
    arrowTo(590, 520, 800, 650, CHALK) +
    chalked('CRACKED', { x: 690, y: 680, size: 52 }, CHALK);
  return `${wall('bulkhead', random)}
<path d="${bend}" stroke="#00000055" stroke-width="118" fill="none" transform="translate(16 26)"/>
<path d="${bend}" stroke="#1d1713" stroke-width="112" fill="none"/><path d="${bend}" stroke="${skin}" stroke-width="98" fill="none"/>
<path d="${bend}" stroke="#ffffff" stroke-opacity="0.16" stroke-width="22" fill="none" transform="translate(-14 -24)"/>${print}
<rect x="120" y="560" width="46" height="140" rx="8" fill="url(#steel)" transform="rotate(-8 140 630)"/>
${mended ? '' : cracks.join('') + marks}`;
}

function elbow({ mended }: Shot, random: Random): string {
  const pipe = 'M-40 300 H 520 Q 700 300 700 480 V 900';
  const blotches = Array.from({ length: 26 }, () => {
    const [x, y, r] = [random.between(380, 780), random.between(230, 620), random.between(20, 78)];
    return `<circle cx="${x}" cy="${y}" r="${r}" fill="url(#rust)" opacity="${random.between(45, 95) / 100}"/>`;
  });
  const weep = `<path d="M640 420 q -12 90 6 170 t -10 190" stroke="#8a4a1c" stroke-width="26" fill="none" opacity="0.8"/>`;
  const marks =
    arrowTo(760, 350, 930, 210, PENCIL) +
    chalked('THIN HERE', { x: 700, y: 130, size: 44 }, PENCIL) +
    ringed(640, 390, 150, 130, PENCIL);
  return `${wall('locker', random)}
<path d="${pipe}" stroke="#00000077" stroke-width="216" fill="none" transform="translate(22 30)"/>
<path d="${pipe}" stroke="#3a3d3f" stroke-width="208" fill="none"/><path d="${pipe}" stroke="#83888a" stroke-width="188" fill="none"/>
<path d="${pipe}" stroke="#e8ebec" stroke-opacity="0.5" stroke-width="34" fill="none" transform="translate(-16 -52)"/>
<rect x="300" y="170" width="66" height="260" rx="10" fill="url(#steel)"/><rect x="566" y="620" width="268" height="60" rx="10" fill="#5f6466"/>
${mended ? '' : blotches.join('') + weep + marks}`;
}

function wire({ mended }: Shot, random: Random): string {
  const lay = Array.from({ length: 27 }, (_, at) => {
    const x = 30 + at * 26;
    return `<path d="M${x} 372 q 26 52 52 96" stroke="#3f4446" stroke-width="6" fill="none"/><path d="M${x + 9} 372 q 26 52 52 96" stroke="#eef1f2" stroke-width="5" fill="none" opacity="0.75"/>`;
  });
  const broken = `<path d="M690 380 q -60 -90 -150 -120 q -50 -16 -66 -66" stroke="#c9ced0" stroke-width="13" fill="none"/><path d="M716 376 q -30 -70 -88 -112" stroke="#9aa0a2" stroke-width="11" fill="none"/>`;
  const stain = Array.from(
    { length: 7 },
    () =>
      `<circle cx="${random.between(640, 760)}" cy="${random.between(360, 470)}" r="${random.between(14, 40)}" fill="url(#rust)"/>`,
  );
  const marks = arrowTo(640, 320, 520, 120, PENCIL) + chalked('1 STRAND', { x: 300, y: 50, size: 50 }, PENCIL);
  return `<rect width="${WIDTH}" height="${HEIGHT}" fill="#9fb2bd"/><rect y="560" width="${WIDTH}" height="280" fill="#6f7f74"/>
<rect x="-20" y="372" width="760" height="96" fill="#b3b8ba"/>${lay.join('')}
<rect x="720" y="346" width="420" height="148" rx="22" fill="url(#steel)"/><rect x="720" y="346" width="26" height="148" fill="#2c3032" opacity="0.5"/>
${mended ? '' : broken + stain.join('') + marks}`;
}

function blisters({ mended }: Shot, random: Random): string {
  const strokes = Array.from({ length: 40 }, () => {
    const y = random.between(0, HEIGHT);
    return `<line x1="0" y1="${y}" x2="${WIDTH}" y2="${y + random.between(-20, 20)}" stroke="#1b0908" stroke-width="${random.between(2, 8)}" opacity="0.12"/>`;
  });
  const spots = Array.from({ length: 12 }, () => ({
    x: random.between(180, 900),
    y: random.between(200, 640),
    r: random.between(12, 34),
  }));
  const raised = spots.map(({ x, y, r }) => `<circle cx="${x}" cy="${y}" r="${r}" fill="url(#blister)"/>`);
  const filled = spots.map(({ x, y, r }) => `<circle cx="${x}" cy="${y}" r="${r + 14}" fill="#c7c2b4" opacity="0.9"/>`);
  const rings = spots.map(({ x, y, r }) => ringed(x, y, r + 16, r + 14, CHALK));
  const frame = `<rect x="120" y="140" width="860" height="560" fill="none" stroke="${CHALK}" stroke-width="7" stroke-dasharray="34 20"/>`;
  const count = chalked('12 PER SQ', { x: 140, y: 730, size: 58 }, CHALK);
  return `${ground('bottom')}${strokes.join('')}${mended ? filled.join('') : raised.join('') + rings.join('') + frame + count}`;
}

function inlet({ mended }: Shot, random: Random): string {
  const pins = [
    [560, 300],
    [450, 480],
    [670, 480],
  ] as const;
  const burnt = `<circle cx="670" cy="480" r="92" fill="#3b2410" opacity="0.85"/><circle cx="690" cy="500" r="130" fill="url(#rust)" opacity="0.8"/>`;
  const brass = pins.map(([x, y], at) => {
    const colour = !mended && at === 2 ? '#3c2a17' : '#d3b35c';
    return `<circle cx="${x}" cy="${y}" r="40" fill="#1d2224"/><circle cx="${x}" cy="${y}" r="27" fill="${colour}"/><circle cx="${x - 7}" cy="${y - 8}" r="8" fill="#ffffff" opacity="0.4"/>`;
  });
  const marks = arrowTo(735, 505, 950, 640, PENCIL) + chalked('BROWNED', { x: 770, y: 670, size: 46 }, PENCIL);
  return `${wall('bulkhead', random)}<circle cx="560" cy="420" r="320" fill="#00000055" transform="translate(14 22)"/>
<circle cx="560" cy="420" r="316" fill="#2a4a78"/><circle cx="560" cy="420" r="262" fill="#1b3156"/><circle cx="560" cy="420" r="232" fill="#e4e2da"/>
${mended ? '' : burnt}${brass.join('')}${mended ? '' : marks}`;
}

function gauge({ level, year }: Shot, random: Random): string {
  const angle = Math.PI * (1.2 - 1.4 * Math.min(1, Math.max(0, level)));
  const [x, y] = [560 + 190 * Math.cos(angle), 430 - 190 * Math.sin(angle)];
  const arc = (from: number, to: number, colour: string) => {
    const at = (part: number) => {
      const turn = Math.PI * (1.2 - 1.4 * part);
      return `${560 + 232 * Math.cos(turn)} ${430 - 232 * Math.sin(turn)}`;
    };
    return `<path d="M${at(from)} A232 232 0 0 1 ${at(to)}" stroke="${colour}" stroke-width="44" fill="none"/>`;
  };
  return `<rect width="${WIDTH}" height="${HEIGHT}" fill="#b3271e"/><rect x="0" width="130" height="${HEIGHT}" fill="#8c1c16"/><rect x="820" width="60" height="${HEIGHT}" fill="#d4594c" opacity="0.6"/>
<circle cx="560" cy="430" r="330" fill="#00000055" transform="translate(14 20)"/><circle cx="560" cy="430" r="326" fill="#8f9496"/><circle cx="560" cy="430" r="292" fill="url(#dial)"/>
${arc(0, 0.28, '#c9332a')}${arc(0.28, 0.78, '#4d8f52')}${arc(0.78, 1, '#c9332a')}
<line x1="560" y1="430" x2="${x}" y2="${y}" stroke="#111" stroke-width="16" stroke-linecap="round"/><circle cx="560" cy="430" r="30" fill="#111"/>
${chalked('BAR', { x: 500, y: 530, size: 44 }, '#333333')}
<g transform="translate(860 ${640 + random.between(0, 20)}) rotate(-4)"><rect width="230" height="120" fill="#f2eee2"/>${chalked(`SEEN ${year}`, { x: 16, y: 42, size: 25 }, '#20365e')}</g>`;
}
