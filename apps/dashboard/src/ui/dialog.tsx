/** A dialog over the page: the browser keeps the focus in it, Escape leaves it, the page behind stays where it was. */
import { type ReactNode, useEffect, useRef } from 'react';
import './dialog.css';

export function Dialog(props: { name: string; onClose: () => void; children: ReactNode }) {
  const ref = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    const dialog = ref.current;
    dialog?.showModal();
    return () => dialog?.close();
  }, []);
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: the keyboard has Escape; this is for a click beside it
    <dialog
      ref={ref}
      className="dialog"
      aria-label={props.name}
      onClose={props.onClose}
      onClick={(event) => event.target === ref.current && props.onClose()}
    >
      <div className="dialog-inside">{props.children}</div>
    </dialog>
  );
}
