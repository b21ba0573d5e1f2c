import { Link } from '@tanstack/react-router';
import { sourceInShort, statusWords } from '../item/source-words.ts';
import { weightWords } from '../strings/codes.ts';
import { strings } from '../strings/rule.ts';
import { sentenceCase } from '../ui/number-words.ts';
import type { Scheme } from './rule.query.ts';
import type { Rule } from './worked-example.ts';

export function SchemeSection({ scheme, rules }: { scheme: Scheme; rules: readonly Rule[] }) {
  if (rules.length === 0) return null;
  return (
    <section className="scheme" aria-labelledby={`scheme-${scheme.id}`}>
      <h2 id={`scheme-${scheme.id}`}>{sentenceCase(scheme.name)}</h2>
      <p className="quiet narrow">
        {scheme.about} {scheme.always && strings.always}
      </p>
      <ul>
        {rules.map((rule) => (
          <RuleLine key={rule.id} rule={rule} />
        ))}
      </ul>
    </section>
  );
}

function RuleLine({ rule: { id, inWords, weight, source } }: { rule: Rule }) {
  return (
    <li className="rule-line">
      <Link to="/rules/$ruleId" params={{ ruleId: id }} className="rule-words">
        {inWords}
      </Link>
      <span className="quiet">{strings.by(weightWords[weight])}</span>
      <span className="quiet">
        {sourceInShort(source)}
        {source.status === 'read' && <span className="sub">{statusWords.read}</span>}
      </span>
    </li>
  );
}
