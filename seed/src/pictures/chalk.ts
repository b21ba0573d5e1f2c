/** Marks as a surveyor makes them: letters, rings and arrows in a few strokes. No machine's typefaces are needed. */

/** Strokes on a field of 4 by 6; a pair is a point, a space begins a new stroke. */
const STROKES: Readonly<Record<string, string>> = {
  '0': '00,40,46,06,00',
  '1': '11,20,26 16,36',
  '2': '01,10,30,41,42,06,46',
  '3': '00,40,22,43,45,36,16,05',
  '4': '30,04,44 30,36',
  '5': '40,00,02,32,43,45,36,06',
  '6': '40,10,02,05,16,36,45,44,33,03',
  '7': '00,40,16',
  '8': '10,30,41,42,33,13,02,01,10 13,04,05,16,36,45,44,33',
  '9': '06,36,44,41,30,10,01,02,13,43',
  A: '06,20,46 13,33',
  B: '00,06,36,45,44,33,03 00,30,41,42,33',
  C: '41,30,10,01,05,16,36,45',
  D: '00,06,26,44,42,20,00',
  E: '40,00,06,46 03,33',
  G: '41,30,10,01,05,16,36,45,43,23',
  H: '00,06 40,46 03,43',
  I: '20,26',
  K: '00,06 40,03,46',
  L: '00,06,46',
  N: '06,00,46,40',
  O: '10,30,41,45,36,16,05,01,10',
  P: '06,00,30,41,42,33,03',
  Q: '10,30,41,45,36,16,05,01,10 34,46',
  R: '06,00,30,41,42,33,03 23,46',
  S: '41,30,10,01,02,44,45,36,16,05',
  T: '00,40 20,26',
  U: '00,05,16,36,45,40',
  W: '00,16,22,36,40',
  X: '00,46 40,06',
  Y: '00,23,40 23,26',
  '-': '13,33',
  '/': '06,40',
  ' ': '',
};

type Place = { readonly x: number; readonly y: number; readonly size: number };

/** `size`: the height of a letter in pixels. */
export function chalked(text: string, { x, y, size }: Place, colour: string): string {
  const unit = size / 6;
  const glyphs = [...text].map((letter, at) => {
    const strokes = (STROKES[letter] ?? '').split(' ').filter((stroke) => stroke !== '');
    const points = (stroke: string) =>
      stroke
        .split(',')
        .map(([px = '0', py = '0']) => `${x + at * unit * 5.4 + Number(px) * unit},${y + Number(py) * unit}`)
        .join(' ');
    return strokes.map((stroke) => `<polyline points="${points(stroke)}"/>`).join('');
  });
  return marks(glyphs.join(''), colour, Math.max(3, size / 7));
}

export const ringed = (x: number, y: number, rx: number, ry: number, colour: string): string =>
  marks(
    `<path d="M${x - rx} ${y} A${rx} ${ry} 0 1 1 ${x + rx * 0.9} ${y + ry * 0.4} A${rx * 1.02} ${ry * 1.04} 0 0 1 ${x - rx * 0.96} ${y - ry * 0.3}"/>`,
    colour,
    9,
  );

export const arrowTo = (x: number, y: number, fromX: number, fromY: number, colour: string): string => {
  const angle = Math.atan2(y - fromY, x - fromX);
  const barb = (turn: number) => `${x - 44 * Math.cos(angle + turn)},${y - 44 * Math.sin(angle + turn)}`;
  return marks(
    `<polyline points="${fromX},${fromY} ${x},${y}"/><polyline points="${barb(0.5)} ${x},${y} ${barb(-0.5)}"/>`,
    colour,
    9,
  );
};

const marks = (inside: string, colour: string, width: number): string =>
  `<g fill="none" stroke="${colour}" stroke-width="${width}" stroke-linecap="round" stroke-linejoin="round">${inside}</g>`;
