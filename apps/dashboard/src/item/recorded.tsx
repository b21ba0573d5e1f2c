/** What the fact changed, as soon as it is recorded. */
import { Link } from '@tanstack/react-router';
import { strings } from '../strings/record.ts';
import { Day } from '../ui/day.tsx';
import { lowerFirst } from '../ui/number-words.ts';
import { PageHeader } from '../ui/page-header.tsx';
import { Standing } from '../ui/standing.tsx';
import { type Change, changes } from './changes.ts';
import { factInWords } from './explanation-words.ts';
import type { Obligation } from './item.query.ts';
import type { Outcome } from './record-form.tsx';
import { sourceInShort } from './source-words.ts';

const { recorded: words } = strings;

export function Recorded(props: { outcome: Outcome; vesselId: string; vesselName: string; onAnother: () => void }) {
  const { item, before, recorded } = props.outcome;
  const all = changes(before, recorded.obligations);
  return (
    <div role="status">
      <PageHeader title={recorded.fact.corrects ? words.corrected : words.title}>
        <p>
          {item.label}: {factInWords(recorded.fact)}.
        </p>
      </PageHeader>
      {recorded.doubts.length > 0 && (
        <div className="caution-words">
          <strong>{words.doubts}</strong>
          {recorded.doubts.map((doubt) => (
            <p key={doubt}>{doubt}</p>
          ))}
        </div>
      )}
      <h2>{all.every(({ kind }) => kind === 'unchanged') ? words.movedNothing : words.change}</h2>
      {all.length === 0 && <p className="quiet">{words.nothing}</p>}
      <ul className="changes">
        {all.map((change) => (
          <ChangeLine key={keyOf(change)} change={change} factId={recorded.fact.id} />
        ))}
      </ul>
      <p className="acts">
        <Link to="/vessels/$vesselId" params={{ vesselId: props.vesselId }} className="button first">
          {strings.form.back(props.vesselName)}
        </Link>
        <Link
          to="/vessels/$vesselId/record"
          params={{ vesselId: props.vesselId }}
          search={{ item: item.id }}
          className="button"
          onClick={props.onAnother}
        >
          {words.another}
        </Link>
      </p>
    </div>
  );
}

function ChangeLine({ change, factId }: { change: Change; factId: string }) {
  const about = change.kind === 'gone' ? change.before : change.after;
  return (
    <li className={change.kind}>
      <p>
        <strong>{about.action.words}</strong> <span className="quiet">{sourceInShort(about.explanation.source)}</span>
      </p>
      <p>
        <Before change={change} />
        {change.kind !== 'gone' && (
          <span className="after">
            <DueDay of={change.after} /> <Standing standing={change.after.standing} />
          </span>
        )}
      </p>
      {(change.kind === 'moved' || change.kind === 'fresh') && (
        <p className="voice">{change.after.explanation.sentence}</p>
      )}
      {change.kind !== 'gone' && <WhyNot obligation={change.after} factId={factId} />}
    </li>
  );
}

/** A fact that moved nothing says what kept it from counting. */
function WhyNot({ obligation, factId }: { obligation: Obligation; factId: string }) {
  const why = obligation.explanation.setAside.find((each) => each.factId === factId)?.why;
  return why ? (
    <p>
      {words.didNotCount} {lowerFirst(why)}
    </p>
  ) : null;
}

function Before({ change }: { change: Change }) {
  switch (change.kind) {
    case 'moved':
      return (
        <>
          <del>
            <DueDay of={change.before} />
          </del>{' '}
          <span className="out-of-sight">{words.became}</span>
          <span aria-hidden="true">→</span>{' '}
        </>
      );
    case 'unchanged':
      return <span className="quiet">{words.unchanged} </span>;
    case 'fresh':
      return <span className="quiet">{words.fresh} </span>;
    case 'gone':
      return <span className="quiet">{words.gone}</span>;
  }
}

const DueDay = ({ of }: { of: Obligation }) => (of.dueOn ? <Day on={of.dueOn} /> : words.noDate);

function keyOf(change: Change): string {
  const { ruleId, duty } = change.kind === 'gone' ? change.before : change.after;
  return `${ruleId} ${duty}`;
}
