/** What the last visits left open at a place: each with its answer, typed in one line. */

import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { send } from '../finding/finding.query.ts';
import { readable } from '../finding/finding-line.tsx';
import { seenWords, tradeWords, urgencyWords } from '../strings/finding-codes.ts';
import { form } from '../strings/form.ts';
import { reasonWords, strings } from '../strings/survey-visit.ts';
import { formatDay, readersToday } from '../ui/calendar.ts';
import { LineChoice, LineForm, LineText } from './line-form.tsx';
import { answerLimitation, type Stop, type Visit } from './visit.query.ts';

const { one } = strings;
type RouteFinding = Stop['findings'][number];
type RouteLimitation = Stop['limitations'][number];

export function OpenMatters({ visit, stop, writing }: { visit: Visit; stop: Stop; writing: boolean }) {
  return (
    <ul className="open-matters">
      {stop.findings.map((finding) => (
        <li key={finding.id}>
          <p>
            <Link to="/findings/$findingId" params={{ findingId: finding.id }}>
              {finding.what}
            </Link>{' '}
            <span className="sub">
              {urgencyWords[finding.urgency]} · {readable(finding.reads)}
              {finding.seen && ` · ${finding.seen === 'new' ? 'new' : seenWords[finding.seen]}`}
            </span>
          </p>
          {writing && !finding.seen && <FindingAnswer visit={visit} finding={finding} />}
        </li>
      ))}
      {stop.limitations.map((limitation) => (
        <li key={limitation.id}>
          <p>
            {limitation.what}{' '}
            <span className="sub">
              {reasonWords[limitation.reason]} · {one.since(formatDay(limitation.imposedOn))}
              {limitation.answered === 'still' && ` · ${one.still}`}
              {limitation.answered === 'lifted' && ` · ${one.lifted}`}
            </span>
          </p>
          {writing && !limitation.answered && <LimitationAnswer visit={visit} limitation={limitation} />}
        </li>
      ))}
      {stop.referrals.map(({ id, what, trade, dueOn }) => (
        <li key={id}>
          <p>
            {what} <span className="sub">{one.asked(tradeWords[trade], formatDay(dueOn))}</span>
          </p>
        </li>
      ))}
    </ul>
  );
}

function FindingAnswer({ visit, finding }: { visit: Visit; finding: RouteFinding }) {
  const [seen, setSeen] = useState('unchanged');
  const [words, setWords] = useState('');
  const isGone = seen === 'gone';
  const write = async (once: (body: unknown) => string) => {
    const text = words.trim();
    if (text === '' && (isGone || seen === 'not_examined')) return form.needed;
    const body = {
      ...{ seen: seen as keyof typeof seenWords, on: readersToday(), visitId: visit.id },
      ...(text !== '' && { words: text }),
      evidence: isGone ? [{ kind: 'looked' as const, words: text }] : [],
    };
    await send(finding.id, { act: 'sighting', body }, `"${finding.version}"`, once(body));
    return null;
  };
  return (
    <LineForm label={one.seen(finding.what)} visitId={visit.id} onWrite={write} moveOn>
      <LineChoice name={one.sighting} words={seenWords} value={seen} onChange={setSeen} />
      <LineText name={isGone ? one.evidence : one.words} wide value={words} onChange={setWords} />
    </LineForm>
  );
}

function LimitationAnswer({ visit, limitation }: { visit: Visit; limitation: RouteLimitation }) {
  const [answer, setAnswer] = useState('still');
  const [reason, setReason] = useState<string>(limitation.reason);
  const [words, setWords] = useState('');
  const write = async (once: (body: unknown) => string) => {
    const text = words.trim();
    if (answer === 'lifted' && text === '') return form.needed;
    const said = text === '' ? {} : { words: text };
    const body =
      answer === 'lifted'
        ? ({ visitId: visit.id, answer, ...said } as const)
        : ({ visitId: visit.id, answer: 'still', reason: reason as RouteLimitation['reason'], ...said } as const);
    await answerLimitation(limitation.id, limitation.version, body, once(body));
    return null;
  };
  return (
    <LineForm label={one.seen(limitation.what)} visitId={visit.id} onWrite={write} moveOn>
      <LineChoice
        name={one.place}
        words={{ still: one.still, lifted: one.lifted }}
        value={answer}
        onChange={setAnswer}
      />
      {answer === 'still' && <LineChoice name={one.reason} words={reasonWords} value={reason} onChange={setReason} />}
      <LineText name={one.words} wide value={words} onChange={setWords} />
    </LineForm>
  );
}
