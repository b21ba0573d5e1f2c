/** A browser by the name people know it by, as far as its own line tells; that line is the browser's word only. */
const BROWSERS = [
  ['Firefox', /Firefox\//],
  ['Edge', /Edg\//],
  ['Opera', /OPR\//],
  ['Chrome', /(?:Headless)?Chrom(?:e|ium)\//],
  ['Safari', /Safari\//],
] as const;
/** The first that fits: a phone's line names the desktop's system too. */
const SYSTEMS = [
  ['Android', /Android/],
  ['iPhone', /iPhone/],
  ['iPad', /iPad/],
  ['Windows', /Windows/],
  ['Mac', /Mac OS X/],
  ['Linux', /Linux/],
] as const;

export function browserInWords(userAgent: string): string {
  const find = (among: readonly (readonly [string, RegExp])[]) =>
    among.find(([, pattern]) => pattern.test(userAgent))?.[0];
  const [browser, system] = [find(BROWSERS), find(SYSTEMS)];
  if (browser && system) return `${browser} on ${system}`;
  return browser ?? system ?? userAgent.slice(0, 60);
}
