/** How urgent it is: word, mark and tone, as standings are told. What cannot wait is solid, whatever its day. */
import { type UrgencyCode, urgencyWords } from '../strings/finding-codes.ts';
import { sentenceCase } from '../ui/number-words.ts';
import { hasEnded } from './act.ts';
import type { Finding } from './finding.query.ts';

type Marked = Pick<Finding, 'urgency' | 'due'>;

export function Urgency({ finding }: { finding: Finding }) {
  const mark = hasEnded(finding) ? 'in_date' : markOf(finding);
  return <span className={`standing ${mark}`}>{words(finding.urgency)}</span>;
}

const words = (urgency: UrgencyCode) => sentenceCase(urgencyWords[urgency]);

const markOf = ({ urgency, due }: Marked) => (urgency === 'before_use' ? 'overdue' : (due?.standing ?? 'in_date'));
