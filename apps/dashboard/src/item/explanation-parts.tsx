import { strings } from '../strings/item.ts';
import { formatDay } from '../ui/calendar.ts';
import { lowerFirst, sentenceCase } from '../ui/number-words.ts';
import { factInWords, limitInWords, remedyInWords } from './explanation-words.ts';
import type { Fact, Obligation } from './item.query.ts';

/** What bound and what did not, each only where there is something to say. */
export function ExplanationParts({ obligation, facts }: { obligation: Obligation; facts: readonly Fact[] }) {
  const { binds, alsoCounted, setAside, assumed, doubts, missing, wouldChangeIt } = obligation.explanation;
  const fact = (id: string) => facts.find((each) => each.id === id);
  // What keeps a date from being known comes first; where there is one all the same, it comes after it.
  const lacking = (
    <Part
      name={strings.missing}
      lines={missing.map(({ what, whereFound }) => `${sentenceCase(what)}; ${strings.usuallyFound(whereFound)}`)}
    />
  );
  return (
    <dl className="parts">
      {!binds && lacking}
      <Part name={strings.binds} lines={binds ? [limitInWords(binds)] : []} />
      <Part name={strings.alsoCounted} lines={alsoCounted.map(limitInWords)} />
      <Part name={strings.expires} lines={expiry(obligation)} />
      <Part
        name={strings.window}
        lines={obligation.windows.map(({ opens, closes }) => strings.windowOf(formatDay(opens), formatDay(closes)))}
      />
      <Part
        name={strings.couldBeExtended}
        lines={obligation.latestPermittedOn ? [strings.extendedTo(formatDay(obligation.latestPermittedOn))] : []}
      />
      <Part name={strings.wouldChangeIt} lines={wouldChangeIt.map(remedyInWords)} />
      {binds && lacking}
      <Part
        name={strings.setAside}
        lines={setAside.map(({ factId, why }) => {
          const about = fact(factId);
          return about ? `${sentenceCase(factInWords(about))}: ${lowerFirst(why)}` : sentenceCase(why);
        })}
      />
      <Part name={strings.assumed} lines={assumed} />
      <Part name={strings.doubts} lines={doubts} />
    </dl>
  );
}

function Part({ name, lines }: { name: string; lines: readonly string[] }) {
  if (lines.length === 0) return null;
  return (
    <div>
      <dt>{name}</dt>
      {[...new Set(lines)].map((line) => (
        <dd key={line}>{line}</dd>
      ))}
    </div>
  );
}

function expiry({ expiresOn, replaceBy }: Obligation): string[] {
  if (!expiresOn) return [];
  return [
    replaceBy
      ? `${formatDay(expiresOn)}; to be replaced by ${formatDay(replaceBy)} at the latest`
      : formatDay(expiresOn),
  ];
}
