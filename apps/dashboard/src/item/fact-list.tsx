/** A thing's facts, oldest first. What was struck out stays, and says that it was and why. */
import { Link } from '@tanstack/react-router';
import { useMay } from '../organisation/may.ts';
import { capacityWords, factWords, outcomeWords, testWords } from '../strings/codes.ts';
import { strings } from '../strings/item.ts';
import { formatDay, formatRecordedDate } from '../ui/calendar.ts';
import type { Fact } from './item.query.ts';

type Props = {
  facts: readonly Fact[];
  itemId: string;
  vesselId: string;
  /** Without a way to correct them: where one of them is being corrected. */
  asTheyAre?: boolean;
};

export function FactList({ facts, itemId, vesselId, asTheyAre = false }: Props) {
  const may = useMay();
  if (facts.length === 0) return <p className="quiet">{strings.noFacts}</p>;
  const inOrder = facts.filter(({ retracts }) => !retracts).sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0));
  return (
    <ul className="facts">
      {inOrder.map((fact) => (
        <li key={fact.id}>
          <FactLine fact={fact} why={facts.find((each) => each.id === fact.struckOutBy)?.note} />
          {may.recordFacts && !asTheyAre && !fact.struckOutBy && (
            <Link
              to="/vessels/$vesselId/record"
              params={{ vesselId }}
              search={{ item: itemId, corrects: fact.id }}
              className="strike-out"
              aria-label={`${strings.strikeOut}: ${formatRecordedDate(fact.on)}, ${whatHappened(fact)}`}
            >
              {strings.correct}
            </Link>
          )}
        </li>
      ))}
    </ul>
  );
}

function FactLine({ fact, why }: { fact: Fact; why: string | undefined }) {
  const when = <time dateTime={fact.on}>{formatRecordedDate(fact.on)}</time>;
  const words = (
    <>
      {whatHappened(fact)} <span className="quiet">{details(fact)}</span>
    </>
  );
  if (!fact.struckOutBy) {
    return (
      <>
        {when} <span>{words}</span>
      </>
    );
  }
  return (
    <>
      <del>{when}</del>{' '}
      <span>
        <del>{words}</del> <em className="quiet">{why ? `${strings.struckOut}: ${why}` : strings.struckOut}</em>
      </span>
    </>
  );
}

function whatHappened(fact: Fact): string {
  const what = fact.test ? testWords[fact.test] : factWords[fact.fact];
  return fact.outcome === 'passed' ? what : `${what}, ${outcomeWords[fact.outcome]}`;
}

function details({ doneBy, reading, until, note, struckOutBy }: Fact): string {
  const who = doneBy?.name ?? (doneBy?.capacity && capacityWords[doneBy.capacity]);
  return [
    reading && `${reading.value} ${reading.unit === 'hours' ? 'hours' : 'sea miles'}`,
    until && `until ${formatDay(until)}`,
    who,
    doneBy?.certificate && `certificate ${doneBy.certificate}`,
    !struckOutBy && note,
  ]
    .filter(Boolean)
    .join(' · ');
}
