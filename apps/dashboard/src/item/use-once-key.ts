import { useRef } from 'react';

/** One key for one body: sent again after a silence it has one effect; changed, it is another request. */
export function useOnceKey(): (body: unknown) => string {
  const last = useRef({ text: '', key: '' });
  return (body) => {
    const text = JSON.stringify(body);
    if (text !== last.current.text) last.current = { text, key: newKey() };
    return last.current.key;
  };
}

/** Not `crypto.randomUUID`: browsers keep it from pages served over plain HTTP. */
function newKey(): string {
  return Array.from(crypto.getRandomValues(new Uint8Array(16)), (byte) => byte.toString(16).padStart(2, '0')).join('');
}
