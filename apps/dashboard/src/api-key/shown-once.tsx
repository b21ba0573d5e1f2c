import { useEffect, useRef, useState } from 'react';
import { strings } from '../strings/api-key.ts';

/** A key's text, for the only time there is. */
export function ShownOnce({ name, text, onShut }: { name: string; text: string; onShut: () => void }) {
  const box = useRef<HTMLElement>(null);
  const [copied, setCopied] = useState(false);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another text is another box to read
  useEffect(() => {
    box.current?.focus();
    setCopied(false);
  }, [text]);
  /** A page over plain HTTP has no clipboard; the text can be selected by hand. */
  const copy = () => navigator.clipboard?.writeText(text).then(() => setCopied(true));
  return (
    <section ref={box} className="shown-once" tabIndex={-1} aria-labelledby="shown-once">
      <h2 id="shown-once">{strings.shown(name)}</h2>
      <p>{strings.shownHow}</p>
      <code>{text}</code>
      <p className="acts">
        <button type="button" className="first" onClick={copy}>
          {strings.copy}
        </button>
        <button type="button" onClick={onShut}>
          {strings.shut}
        </button>
        <span role="status">{copied && strings.copied}</span>
      </p>
    </section>
  );
}
