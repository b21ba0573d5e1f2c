/** Words that must be heeded before anybody works on the thing. */
export function Caution({ children }: { children: string }) {
  return (
    <p className="caution-words" role="note">
      {children}
    </p>
  );
}
