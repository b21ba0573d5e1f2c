/** Day or night: the device's own choice until somebody makes another. `public/theme.js` applies it before the first paint. */
export const THEMES = ['device', 'day', 'night'] as const;
export type Theme = (typeof THEMES)[number];

export function keptTheme(): Theme {
  const kept = document.documentElement.dataset.theme;
  return kept === 'day' || kept === 'night' ? kept : 'device';
}

export function keepTheme(theme: Theme): void {
  if (theme === 'device') {
    delete document.documentElement.dataset.theme;
    localStorage.removeItem('theme');
  } else {
    document.documentElement.dataset.theme = theme;
    localStorage.setItem('theme', theme);
  }
}
