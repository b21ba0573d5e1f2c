import { schemeWords, weightWords } from '../strings/codes.ts';
import { strings } from '../strings/item.ts';
import { sentenceCase } from '../ui/number-words.ts';
import type { Obligation } from './item.query.ts';
import { sourceInFull } from './source-words.ts';

/** What stands behind the date and how far it was checked. */
export function SourceLine({ obligation: { weight, scheme, explanation } }: { obligation: Obligation }) {
  const { source } = explanation;
  const full = sourceInFull(source);
  return (
    <p className="quiet">
      {source.address?.startsWith('http') ? (
        <a href={source.address} rel="noreferrer">
          {full}
        </a>
      ) : (
        full
      )}{' '}
      {sentenceCase(`by ${weightWords[weight]}`)}
      {schemeWords[scheme] !== weightWords[weight] && `, under ${schemeWords[scheme]}`}. {strings.comesFirst}
    </p>
  );
}
