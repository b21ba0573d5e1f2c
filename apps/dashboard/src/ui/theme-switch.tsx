import { useState } from 'react';
import { strings } from '../strings/frame.ts';
import { keepTheme, keptTheme, THEMES, type Theme } from './theme.ts';

export function ThemeSwitch() {
  const [theme, setTheme] = useState(keptTheme);
  const choose = (next: Theme) => {
    keepTheme(next);
    setTheme(next);
  };
  return (
    <fieldset className="theme-switch">
      <legend className="out-of-sight">{strings.theme.legend}</legend>
      {THEMES.map((each) => (
        <label key={each}>
          <input type="radio" name="theme" checked={each === theme} onChange={() => choose(each)} />
          <span>{strings.theme[each]}</span>
        </label>
      ))}
    </fieldset>
  );
}
