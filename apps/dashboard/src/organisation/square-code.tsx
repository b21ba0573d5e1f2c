import { encode } from 'uqr';

/** Text as a square code (ISO/IEC 18004) that a phone's camera reads: always dark on white, in the night theme too. */
export function SquareCode({ text, name }: { text: string; name: string }) {
  const { data, size } = encode(text, { border: 4 });
  const dark = data.flatMap((row, y) => row.flatMap((isDark, x) => (isDark ? [`M${x} ${y}h1v1h-1z`] : [])));
  return (
    <svg
      className="square-code"
      role="img"
      aria-label={name}
      viewBox={`0 0 ${size} ${size}`}
      shapeRendering="crispEdges"
    >
      <rect width={size} height={size} fill="#fff" />
      <path d={dark.join('')} fill="#000" />
    </svg>
  );
}
