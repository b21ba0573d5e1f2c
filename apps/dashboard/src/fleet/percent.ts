/** Drawn in percent, so that paper narrower than the screen still shows the whole of it. */
export function percent(pixels: number, width: number): string {
  return width === 0 ? '0%' : `${(pixels / width) * 100}%`;
}
