import type { ItemKind } from '../item/catalogue.query.ts';
import { strings } from '../strings/rule.ts';
import { inAList } from '../ui/number-words.ts';
import { namesOf, resetInWords } from './rule-words.ts';
import type { Rule } from './worked-example.ts';

const words = strings.rule;
type Props = { rule: Rule; kinds: readonly ItemKind[] };

/** What must be done, by when, and what starts its clock anew; then what is assumed, and what nobody works out here. */
export function RuleDuties({ rule, kinds }: Props) {
  return (
    <>
      <section aria-labelledby="asks">
        <h2 id="asks">{words.asks}</h2>
        {rule.appliesWhen.map((line) => (
          <p key={line}>{line}</p>
        ))}
        {rule.duties.length === 0 && <p className="quiet">{words.noDuty}</p>}
        <ul className="duties">
          {rule.duties.map((duty) => (
            <li key={duty.id}>
              <strong>{duty.action.words}</strong>
              <p>
                {duty.inWords}. {duty.onlyFor && words.only(inAList(namesOf(duty.onlyFor, kinds)))}
              </p>
              <ul className="resets quiet">
                {duty.details.map((line) => (
                  <li key={line}>{line}</li>
                ))}
              </ul>
              <Resets resets={duty.resets} />
            </li>
          ))}
        </ul>
      </section>
      <Lines id="checks" heading={words.checks} lines={rule.checks.map(({ inWords }) => inWords)} />
      <Lines id="missing" heading={words.whileNotRecorded} lines={rule.whileNotRecorded} />
      <Lines id="also" heading={words.alsoAsks} lines={rule.alsoAsks} />
    </>
  );
}

function Resets({ resets }: { resets: Rule['duties'][number]['resets'] }) {
  const lines = [...new Set(resets.map(resetInWords))];
  if (lines.length === 0) return <p className="quiet">{words.neverAnew}</p>;
  if (lines.length === 1) {
    return (
      <p className="quiet">
        {words.startsAnew} {lines[0]}.
      </p>
    );
  }
  return (
    <div className="quiet">
      <p>{words.startsAnewEither}</p>
      <ul className="resets">
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </div>
  );
}

function Lines({ id, heading, lines }: { id: string; heading: string; lines: readonly string[] }) {
  if (lines.length === 0) return null;
  return (
    <section aria-labelledby={id}>
      <h2 id={id}>{heading}</h2>
      <ul className="duties">
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </section>
  );
}
