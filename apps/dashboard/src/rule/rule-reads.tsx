import { factWords, testWords } from '../strings/codes.ts';
import { eventWords, situationWords, strings } from '../strings/rule.ts';
import { sentenceCase } from '../ui/number-words.ts';
import type { Rule } from './worked-example.ts';

const words = strings.rule;

/** What has to be recorded for the rule to work; each with the name that a request gives it. */
export function RuleReads({ reads }: { reads: Rule['reads'] }) {
  const { facts, tests, attributes, events, situations } = reads;
  const nothing = [facts, tests, attributes, events, situations].every((each) => each.length === 0);
  return (
    <>
      <h2>{words.reads}</h2>
      {nothing && <p className="quiet">{words.readsNothing}</p>}
      <Read name={words.facts} lines={facts.map((code) => [factWords[code], code])} />
      <Read name={words.tests} lines={tests.map((code) => [testWords[code], code])} />
      <Read
        name={words.attributes}
        lines={attributes.map(({ name, words: said, whereFound }) => [`${said}; ${words.found(whereFound)}`, name])}
      />
      <Read name={words.events} lines={events.map((code) => [eventWords[code], code])} />
      <Read name={words.situations} lines={situations.map((code) => [situationWords[code], code])} />
    </>
  );
}

function Read({ name, lines }: { name: string; lines: readonly (readonly [said: string, code: string])[] }) {
  if (lines.length === 0) return null;
  return (
    <>
      <h3>{name}</h3>
      <ul className="reads">
        {lines.map(([said, code]) => (
          <li key={code}>
            {sentenceCase(said)} <code>{code}</code>
          </li>
        ))}
      </ul>
    </>
  );
}
