/** Every fault at the head of a form, each leading to its box; takes the focus when it appears or changes. */
import { useEffect, useRef } from 'react';

type Fault = { id: string; name: string; fault: string };

export function FaultSummary(props: {
  heading: string;
  why: string;
  faults: readonly Fault[];
  others: readonly string[];
}) {
  const box = useRef<HTMLDivElement>(null);
  const { faults, others } = props;
  const told = [...faults.map(({ id, fault }) => id + fault), ...others].join('\n');
  useEffect(() => {
    if (told) box.current?.focus();
  }, [told]);
  if (!told) return null;
  return (
    <div ref={box} className="faults" role="alert" tabIndex={-1}>
      <h2>{props.heading}</h2>
      <p>{props.why}</p>
      <ul>
        {others.map((other) => (
          <li key={other}>{other}</li>
        ))}
        {faults.map(({ id, name, fault }) => (
          <li key={id}>
            <a
              href={`#${id}`}
              onClick={(event) => {
                event.preventDefault();
                document.getElementById(id)?.focus();
              }}
            >
              {name}
            </a>
            : {fault}
          </li>
        ))}
      </ul>
    </div>
  );
}
