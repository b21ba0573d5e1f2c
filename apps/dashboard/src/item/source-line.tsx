import { Link } from '@tanstack/react-router';
import { schemeWords, weightWords } from '../strings/codes.ts';
import { strings } from '../strings/item.ts';
import { sentenceCase } from '../ui/number-words.ts';
import type { Obligation } from './item.query.ts';
import { sourceInFull } from './source-words.ts';

/** What stands behind the date and how far it was checked; the rule's own page says the rest. */
export function SourceLine({ obligation: { ruleId, weight, scheme, explanation } }: { obligation: Obligation }) {
  return (
    <p className="quiet">
      <Link to="/rules/$ruleId" params={{ ruleId }}>
        {sourceInFull(explanation.source)}
      </Link>{' '}
      {sentenceCase(`by ${weightWords[weight]}`)}
      {schemeWords[scheme] !== weightWords[weight] && `, under ${schemeWords[scheme]}`}. {strings.comesFirst}
    </p>
  );
}
