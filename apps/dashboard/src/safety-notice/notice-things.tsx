/** The things that a notice is about, by vessel: what waits first, then what is answered. */
import { Link } from '@tanstack/react-router';
import { useMay } from '../organisation/may.ts';
import { strings as itemStrings } from '../strings/item.ts';
import { strings } from '../strings/safety-notice.ts';
import { sentenceCase } from '../ui/number-words.ts';
import type { NoticeAnswer, NoticeItem, SafetyNotice } from './notice.query.ts';
import { answerInWords, markOf } from './notice-words.ts';

const { one } = strings;
type Props = { notice: SafetyNotice; items: readonly NoticeItem[] };

export function NoticeThings({ notice, items }: Props) {
  const vessels = [...Map.groupBy(items, ({ vessel }) => vessel.id).values()].sort(byWaitingThenName);
  return (
    <section aria-labelledby="things">
      <h2 id="things">{one.onBoard}</h2>
      {items.length === 0 && <p className="quiet">{one.nothing}</p>}
      {vessels.map((hers) => {
        const vessel = hers[0]?.vessel;
        return (
          vessel && (
            <div key={vessel.id} className="notice-vessel">
              <h3>
                <Link to="/vessels/$vesselId" params={{ vesselId: vessel.id }} className="vessel-name">
                  {vessel.name}
                </Link>
              </h3>
              <ul>
                {hers.toSorted(byState).map((each) => (
                  <Thing key={each.item.id} notice={notice} thing={each} />
                ))}
              </ul>
            </div>
          )
        );
      })}
    </section>
  );
}

const ORDER: Record<NoticeItem['state'], number> = { affected: 0, may_be_affected: 1, answered: 2 };
const byState = (a: NoticeItem, b: NoticeItem) => ORDER[a.state] - ORDER[b.state];
const first = (hers: readonly NoticeItem[]) => Math.min(...hers.map(({ state }) => ORDER[state]));
const nameOf = (hers: readonly NoticeItem[]) => hers[0]?.vessel.name ?? '';

function byWaitingThenName(a: readonly NoticeItem[], b: readonly NoticeItem[]): number {
  return first(a) - first(b) || nameOf(a).localeCompare(nameOf(b));
}

function Thing({ notice, thing }: { notice: SafetyNotice; thing: NoticeItem }) {
  const { item, state, because, answers } = thing;
  const may = useMay();
  const asks = may.recordFacts && !notice.withdrawn;
  return (
    <li className="notice-thing">
      <span className={`standing ${markOf(notice, state)}`}>{strings.item[state]}</span>
      <div>
        <p>
          <strong>{item.label}</strong>{' '}
          <span className="quiet">
            {[item.maker, item.model, item.serialNumber ? one.serial(item.serialNumber) : one.noSerial]
              .filter(Boolean)
              .join(', ')}
          </span>
        </p>
        {state === 'may_be_affected' && <p className="quiet">{sentenceCase(because.join('; '))}.</p>}
        {answers.map((each) => (
          <Given key={each.id} notice={notice} answer={each} mayCorrect={asks} />
        ))}
      </div>
      {state !== 'answered' && asks && (
        <Link
          to="/notices/$noticeId/answer"
          params={{ noticeId: notice.id }}
          search={{ item: item.id }}
          className="button"
          aria-label={`${state === 'affected' ? one.answerIt : one.lookFirst}: ${item.label}, ${thing.vessel.name}`}
        >
          {state === 'affected' ? one.answerIt : one.lookFirst}
        </Link>
      )}
    </li>
  );
}

type GivenProps = { notice: SafetyNotice; answer: NoticeAnswer; mayCorrect: boolean };

/** A struck-out answer stays readable. */
function Given({ notice, answer, mayCorrect }: GivenProps) {
  const words = answerInWords(answer);
  if (answer.struckOutBy)
    return (
      <p className="quiet">
        <del>{words}</del> <span className="out-of-sight">{itemStrings.struckOut}</span>
      </p>
    );
  return (
    <p>
      {words}.{' '}
      {mayCorrect && (
        <Link
          to="/notices/$noticeId/answer"
          params={{ noticeId: notice.id }}
          search={{ item: answer.itemId, corrects: answer.id }}
          className="quiet"
        >
          {one.correct}
        </Link>
      )}
    </p>
  );
}
