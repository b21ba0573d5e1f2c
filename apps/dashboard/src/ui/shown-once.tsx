import { useEffect, useRef, useState } from 'react';
import './shown-once.css';

type Words = {
  readonly heading: string;
  readonly how: string;
  readonly copy: string;
  readonly copied: string;
  readonly shut: string;
};

/** A secret, for the only time there is. */
export function ShownOnce({ words, text, onShut }: { words: Words; text: string; onShut: () => void }) {
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
      <h2 id="shown-once">{words.heading}</h2>
      <p>{words.how}</p>
      <code>{text}</code>
      <p className="acts">
        <button type="button" className="first" onClick={copy}>
          {words.copy}
        </button>
        <button type="button" onClick={onShut}>
          {words.shut}
        </button>
        <span role="status">{copied && words.copied}</span>
      </p>
    </section>
  );
}
