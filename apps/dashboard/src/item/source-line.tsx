import { schemeWords, weightWords } from '../strings/codes.ts';
import { strings } from '../strings/item.ts';
import { sentenceCase } from '../ui/number-words.ts';
import type { Obligation } from './item.query.ts';
import { noticeOf } from './notice-of.ts';
import { SourceLink } from './source-link.tsx';
import { noticeInFull, sourceInFull } from './source-words.ts';

/** What stands behind the date and how far it was checked; the rule's own page says the rest. */
export function SourceLine({ obligation: { ruleId, weight, scheme, explanation } }: { obligation: Obligation }) {
  return (
    <p className="quiet">
      <SourceLink ruleId={ruleId}>
        {noticeOf(ruleId) ? noticeInFull(explanation.source) : sourceInFull(explanation.source)}
      </SourceLink>{' '}
      {sentenceCase(`by ${weightWords[weight]}`)}
      {schemeWords[scheme] !== weightWords[weight] && !noticeOf(ruleId) && `, under ${schemeWords[scheme]}`}.{' '}
      {strings.comesFirst}
    </p>
  );
}
