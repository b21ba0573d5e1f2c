/** Shown only when an answer takes long enough to be noticed (the delay is in the style). */
export function Waiting({ children }: { children: string }) {
  return (
    <p role="status" className="waiting quiet">
      {children}
    </p>
  );
}
