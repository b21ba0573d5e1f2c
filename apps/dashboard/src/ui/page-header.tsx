import { type ReactNode, useEffect } from 'react';

/** What the page asks or states, the answer in a sentence, and what can be done. */
export function PageHeader(props: { title: string; heading?: ReactNode; children?: ReactNode; acts?: ReactNode }) {
  useEffect(() => {
    document.title = props.title;
  }, [props.title]);
  return (
    <header className="page-header">
      <div>
        <h1>{props.heading ?? props.title}</h1>
        {props.children}
      </div>
      {props.acts && <div className="acts">{props.acts}</div>}
    </header>
  );
}
