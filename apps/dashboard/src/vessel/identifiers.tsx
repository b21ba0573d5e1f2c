import type { components } from '@garboard/client/generated/api.d.ts';
import { strings } from '../strings/vessel.ts';
import { identifierWords } from './identifier-words.ts';

type Props = { vessel: components['schemas']['Vessel'] };

const { heading, inDoubt } = strings.identifiers;

/** What each of her identifiers says, and plainly where they do not agree. Not there while she has none. */
export function Identifiers({ vessel }: Props) {
  const told = identifierWords(vessel);
  const doubts = vessel.identifierNotes?.doubts ?? [];
  if (told.length === 0) return null;
  return (
    <section aria-labelledby="identifiers" className="identifiers">
      <h2 id="identifiers">{heading}</h2>
      <dl className="parts">
        {told.map(({ name, written, words }) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>
              <strong>{written}</strong> <span className="quiet">{words}</span>
            </dd>
          </div>
        ))}
        {doubts.length > 0 && (
          <div>
            <dt>
              <span className="standing unknown">{inDoubt}</span>
            </dt>
            {doubts.map((doubt) => (
              <dd key={doubt}>{doubt}</dd>
            ))}
          </div>
        )}
      </dl>
    </section>
  );
}
