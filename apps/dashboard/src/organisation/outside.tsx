/** A page before or beside the organisation: no navigation, one thing to do. */
import type { ReactNode } from 'react';
import { strings } from '../strings/frame.ts';
import { PageHeader } from '../ui/page-header.tsx';
import { ThemeSwitch } from '../ui/theme-switch.tsx';
import './people.css';

export function Outside(props: { title: string; how?: ReactNode; wide?: true; children?: ReactNode }) {
  return (
    <main className={props.wide ? 'signed-out wide' : 'signed-out'} id="page">
      <div className="scale-bar" aria-hidden="true" />
      <PageHeader title={props.title}>{props.how && <p>{props.how}</p>}</PageHeader>
      {props.children}
      <div className="foot">
        <ThemeSwitch />
        <p className="quiet">{strings.caution}</p>
      </div>
    </main>
  );
}
