import { Link } from '@tanstack/react-router';
import type { ReactNode } from 'react';
import { noticeOf } from './notice-of.ts';

/** Where it stands in full: the rule's page, or the safety notice's. */
export function SourceLink({
  ruleId,
  className,
  children,
}: {
  ruleId: string;
  className?: string;
  children: ReactNode;
}) {
  const noticeId = noticeOf(ruleId);
  const style = className === undefined ? {} : { className };
  return noticeId === null ? (
    <Link to="/rules/$ruleId" params={{ ruleId }} {...style}>
      {children}
    </Link>
  ) : (
    <Link to="/notices/$noticeId" params={{ noticeId }} {...style}>
      {children}
    </Link>
  );
}
