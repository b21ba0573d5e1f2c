/** What was seen, said and done about it, from the first day on. */

import { PictureLink } from '../evidence/picture.tsx';
import { capacityWords } from '../strings/codes.ts';
import { strings } from '../strings/finding.ts';
import { hazardWords, seenWords, stepWords, tradeWords, urgencyWords } from '../strings/finding-codes.ts';
import { nameOfZone } from '../strings/zones.ts';
import { formatDay, formatInstant } from '../ui/calendar.ts';
import type { FindingEntry } from './finding.query.ts';
import { useWho } from './who.ts';

const { one, boxes } = strings;

export function Story({ entries }: { entries: readonly FindingEntry[] }) {
  return (
    <ol className="story">
      {entries.map((entry) => (
        <StoryEntry key={entry.id} entry={entry} />
      ))}
    </ol>
  );
}

export function StoryEntry({ entry }: { entry: FindingEntry }) {
  const who = useWho();
  return (
    <li>
      <time dateTime={entry.on}>{formatDay(entry.on)}</time>
      <div>
        <strong>{headOf(entry)}</strong>
        {linesOf(entry.said).map((line) => (
          <p key={line}>{line}</p>
        ))}
        <Shown evidence={entry.evidence} />
        <p className="quiet">{one.by(who(entry.recordedBy), formatInstant(Date.parse(entry.recordedAt)))}</p>
      </div>
    </li>
  );
}

function Shown({ evidence }: Pick<FindingEntry, 'evidence'>) {
  if (evidence.length === 0) return null;
  const words = [...new Set(evidence.map((each) => each.words))].join('; ');
  const pictures = evidence.filter(({ evidenceId }) => evidenceId !== undefined);
  return (
    <>
      <p>
        {boxes.evidence}: {words}
      </p>
      {pictures.length > 0 && (
        <ul className="pictures small">
          {pictures.map((each) => (
            <li key={each.evidenceId}>
              <PictureLink id={each.evidenceId ?? ''} words={each.words} />
            </li>
          ))}
        </ul>
      )}
    </>
  );
}

function headOf({ step, said }: FindingEntry): string {
  const words = stepWords[step] ?? step.replaceAll('_', ' ');
  return step === 'seen' ? `${words}: ${seenWords[said['seen'] as keyof typeof seenWords]}` : words;
}

type Told = Readonly<Record<string, unknown>>;
const text = (value: unknown): string => String(value);

/** Each thing that an entry says, in the order in which people read it. */
const SAYS: Readonly<Record<string, (value: unknown) => string>> = {
  what: text,
  words: text,
  work: text,
  reason: (value) => `${boxes.reason}: ${text(value)}`,
  zone: (value) => `${boxes.where}: ${nameOfZone(text(value))}`,
  hazard: (value) => `${boxes.hazard}: ${hazardWords[value as keyof typeof hazardWords]}`,
  urgency: (value) => `${boxes.urgency}: ${urgencyWords[value as keyof typeof urgencyWords]}`,
  urgentBy: (value) => `${boxes.urgentBy}: ${formatDay(text(value))}`,
  trade: (value) => `${boxes.trade}: ${tradeWords[value as keyof typeof tradeWords]}`,
  forDay: (value) => `${boxes.forDay}: ${formatDay(text(value))}`,
  doneOn: (value) => `${boxes.doneOn}: ${formatDay(text(value))}`,
  doneBy: (value) => {
    const { name, capacity } = value as { name: string; capacity: keyof typeof capacityWords };
    return `${boxes.doneBy}: ${name}, ${capacityWords[capacity]}`;
  },
  offer: (value) => `${boxes.offer}: ${text(value)}`,
  yes: (value) => (value ? boxes.saidYes : boxes.saidNo),
  name: text,
  until: (value) => `${boxes.until}: ${formatDay(text(value))}`,
  reviewOn: (value) => `${boxes.reviewOn}: ${formatDay(text(value))}`,
  responsible: (value) => `${boxes.responsible}: ${text(value)}`,
  estimate: (value) => {
    const { amount, currency, author } = value as { amount: string; currency: string; author: string };
    return `${boxes.estimate}: ${one.estimate(`${amount} ${currency}`, author)}`;
  },
};

function linesOf(said: Told): string[] {
  const flat: Told = { ...said, ...((said['said'] ?? {}) as Told), ...((said['change'] ?? {}) as Told) };
  return Object.entries(SAYS).flatMap(([name, say]) => {
    const value = flat[name];
    return value === undefined || value === null ? [] : [say(value)];
  });
}
