import { Link } from '@tanstack/react-router';
import type { ItemKind } from '../item/catalogue.query.ts';
import { statusWords } from '../item/source-words.ts';
import { schemeWords, weightWords } from '../strings/codes.ts';
import { strings as itemStrings } from '../strings/item.ts';
import { strings } from '../strings/rule.ts';
import { sentenceCase } from '../ui/number-words.ts';
import { RuleReads } from './rule-reads.tsx';
import type { Rule } from './worked-example.ts';

const words = strings.rule;
type Props = { rule: Rule; kinds: readonly ItemKind[] };

export function RuleSide({ rule, kinds }: Props) {
  const its = rule.kinds.flatMap((id) => kinds.find((kind) => kind.id === id) ?? []);
  return (
    <aside className="rule-side">
      <h2>{words.source}</h2>
      <Source rule={rule} />
      <h2>{words.things}</h2>
      {its.length === 0 && <p className="quiet">{words.noThings}</p>}
      <ul className="things">
        {its.map(({ id, name }) => (
          <li key={id}>
            <Link to="/rules" search={{ kind: id }}>
              {sentenceCase(name)}
            </Link>
          </li>
        ))}
      </ul>
      <RuleReads reads={rule.reads} />
    </aside>
  );
}

function Source({ rule: { source, weight, scheme } }: { rule: Rule }) {
  const named = [source.publication, source.clause].filter(Boolean).join(', ');
  return (
    <>
      <p>
        {source.address?.startsWith('http') && named ? (
          <a href={source.address} rel="noreferrer">
            {named}
          </a>
        ) : (
          named || words.nowhere
        )}
      </p>
      <p>
        <strong>{sentenceCase(statusWords[source.status])}.</strong>{' '}
        {source.fromMemory && words.partFromMemory(source.fromMemory)}
      </p>
      <p className="quiet">
        {words.behind(weightWords[weight])}
        {schemeWords[scheme] !== weightWords[weight] && `, under ${schemeWords[scheme]}`}. {itemStrings.comesFirst}
      </p>
    </>
  );
}
