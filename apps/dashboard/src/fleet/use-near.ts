/** Whether a row is near what is seen: marks of a row far away are not drawn until they are scrolled to, or printed. */
import { type RefObject, useEffect, useRef, useState } from 'react';
import { flushSync } from 'react-dom';

/** A screenful and more in both directions, so that the arrow keys always find the next row drawn. */
const AHEAD = '900px';

export function useNear<E extends Element>(): { ref: RefObject<E | null>; near: boolean } {
  const ref = useRef<E>(null);
  const [near, setNear] = useState(false);
  useEffect(() => {
    const row = ref.current;
    if (!row) return;
    const seen = new IntersectionObserver(([entry]) => setNear(entry?.isIntersecting ?? false), { rootMargin: AHEAD });
    const draw = () => flushSync(() => setNear(true));
    seen.observe(row);
    window.addEventListener('beforeprint', draw);
    return () => {
      seen.disconnect();
      window.removeEventListener('beforeprint', draw);
    };
  }, []);
  return { ref, near };
}
