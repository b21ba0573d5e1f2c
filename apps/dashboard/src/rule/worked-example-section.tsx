import { useQuery } from '@tanstack/react-query';
import { whyItFailed } from '../api/why-it-failed.ts';
import type { ItemKind } from '../item/catalogue.query.ts';
import { emphasised } from '../item/emphasised.tsx';
import { limitInWords } from '../item/explanation-words.ts';
import { strings as itemStrings } from '../strings/item.ts';
import { strings } from '../strings/rule.ts';
import { readersToday } from '../ui/calendar.ts';
import { Failed } from '../ui/failed.tsx';
import { Standing } from '../ui/standing.tsx';
import { Waiting } from '../ui/waiting.tsx';
import { explainQuery } from './rule.query.ts';
import { namesOf } from './rule-words.ts';
import { type Rule, type WorkedExample, workedExample } from './worked-example.ts';
import { Stated } from './worked-example-stated.tsx';

const { example: words } = strings;
type Props = { rule: Rule; kinds: readonly ItemKind[] };

/** Left out where the rule gives an invented thing no date. */
export function WorkedExampleSection({ rule, kinds }: Props) {
  const example = workedExample(rule, readersToday());
  return example && <Explained example={example} rule={rule} kinds={kinds} />;
}

function Explained({ example, rule, kinds }: Props & { example: WorkedExample }) {
  const { data, error, isPending, refetch } = useQuery(explainQuery(example));
  if (isPending) return <Waiting>{words.waiting}</Waiting>;
  if (!data) return <Failed what={words.failed} why={whyItFailed(error)} again={refetch} />;
  const its = data.items.filter(({ ruleId, dueOn }) => ruleId === rule.id && dueOn);
  if (its.length === 0) return null;
  const [name = example.kind] = namesOf([example.kind], kinds);
  return (
    <section aria-labelledby="example" className="worked-example">
      <h2 id="example">{words.heading}</h2>
      <p className="quiet">{words.invented(name)}</p>
      <Stated example={example} rule={rule} />
      <ul>
        {its.map((obligation) => (
          <li key={obligation.duty} className="worked">
            <Standing standing={obligation.standing} />
            <p className="voice">{emphasised(obligation)}</p>
            {obligation.explanation.binds && (
              <p className="quiet">
                {itemStrings.binds}: {limitInWords(obligation.explanation.binds)}
              </p>
            )}
          </li>
        ))}
      </ul>
      <details>
        <summary>{words.request}</summary>
        <p className="quiet">{words.requestHow}</p>
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable with the keyboard */}
        <pre tabIndex={0}>{JSON.stringify(example, null, 2)}</pre>
      </details>
    </section>
  );
}
