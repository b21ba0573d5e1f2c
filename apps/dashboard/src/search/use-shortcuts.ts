/** The keys that work on every page. Single characters can be switched off (WCAG 2.2, 2.1.4). */
import { useLocalStorage } from '@mantine/hooks';
import { useEffect } from 'react';

export type Opened = 'palette' | 'shortcuts' | null;

export function useSingleKeys(): [boolean, (on: boolean) => void] {
  const [off, setOff] = useLocalStorage({ key: 'single-keys', defaultValue: 'on', getInitialValueInEffect: false });
  return [off === 'on', (on) => setOff(on ? 'on' : 'off')];
}

export function useShortcuts(onOpen: (what: Exclude<Opened, null>) => void): void {
  const [singleKeys] = useSingleKeys();
  useEffect(() => {
    const listen = (event: KeyboardEvent) => {
      const what = meant(event, singleKeys);
      if (!what || document.querySelector('dialog[open]')) return;
      event.preventDefault();
      onOpen(what);
    };
    document.addEventListener('keydown', listen);
    return () => document.removeEventListener('keydown', listen);
  }, [onOpen, singleKeys]);
}

function meant(event: KeyboardEvent, singleKeys: boolean): Exclude<Opened, null> | null {
  if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === 'k') return 'palette';
  if (!singleKeys || event.ctrlKey || event.metaKey || event.altKey || isTyping(event.target)) return null;
  if (event.key === '/') return 'palette';
  return event.key === '?' ? 'shortcuts' : null;
}

const isTyping = (target: EventTarget | null) =>
  target instanceof HTMLElement && target.matches('input:not([type=checkbox], [type=radio]), textarea, select');
