import { useRef } from 'react';
import { newKey } from '../api/new-key.ts';

/** One key for one body: sent again after a silence it has one effect; changed, it is another request. */
export function useOnceKey(): (body: unknown) => string {
  const last = useRef({ text: '', key: '' });
  return (body) => {
    const text = JSON.stringify(body);
    if (text !== last.current.text) last.current = { text, key: newKey() };
    return last.current.key;
  };
}
