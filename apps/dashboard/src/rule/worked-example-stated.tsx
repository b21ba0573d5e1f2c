import { byWhomWords, factWords, testWords } from '../strings/codes.ts';
import { eventWords, strings } from '../strings/rule.ts';
import { formatDay, formatRecordedDate } from '../ui/calendar.ts';
import { counted, sentenceCase } from '../ui/number-words.ts';
import type { Rule, WorkedExample } from './worked-example.ts';

const { example: words } = strings;

/** What the example invents, in words. */
export function Stated({
  example: { facts, events = [], attributes = {} },
  rule,
}: {
  example: WorkedExample;
  rule: Rule;
}) {
  const figures = Object.entries(attributes).map(([name, value]) => {
    const attribute = rule.reads.attributes.find((each) => each.name === name);
    return { name: attribute?.words ?? name, value: attribute?.is === 'months' ? inYears(Number(value)) : `${value}` };
  });
  return (
    <dl className="parts">
      {facts.length > 0 && (
        <div>
          <dt>{words.facts}</dt>
          {facts.map((fact) => (
            <dd key={JSON.stringify(fact)}>
              {sentenceCase(fact.test ? testWords[fact.test] : factWords[fact.fact])} {formatRecordedDate(fact.on)}
              {fact.doneBy?.capacity && `, by ${byWhomWords[fact.doneBy.capacity]}`}
            </dd>
          ))}
        </div>
      )}
      {events.length > 0 && (
        <div>
          <dt>{words.events}</dt>
          {events.map(({ event, on }) => (
            <dd key={event}>
              {sentenceCase(eventWords[event])} {formatDay(on)}
            </dd>
          ))}
        </div>
      )}
      {figures.length > 0 && (
        <div>
          <dt>{words.figures}</dt>
          {figures.map(({ name, value }) => (
            <dd key={name}>
              {sentenceCase(name)}: {value}
            </dd>
          ))}
        </div>
      )}
    </dl>
  );
}

/** Whole years as years. */
function inYears(months: number): string {
  return months % 12 === 0 ? counted(months / 12, 'year', 'years') : counted(months, 'month', 'months');
}
