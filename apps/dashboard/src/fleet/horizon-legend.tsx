import { strings } from '../strings/fleet.ts';

export function HorizonLegend({ hasSeason }: { hasSeason: boolean }) {
  return (
    <div className="horizon-legend">
      <Entry kind="service" words={strings.marks.service} />
      <Entry kind="replace" words={strings.marks.replace} />
      <Entry kind="document" words={strings.marks.document} />
      <span>
        <i className="mark service due" aria-hidden="true" />
        {strings.dueSoon}
      </span>
      <span>
        <i className="stack still" aria-hidden="true">
          <i className="mark service in_date" />
          <b>3</b>
        </i>
        {strings.severalHere}
      </span>
      <span>
        <i className="laid-up still" aria-hidden="true" />
        {strings.laidUp}
      </span>
      <span>
        <i className="ashore still" aria-hidden="true" />
        {strings.ashore}
      </span>
      <span>
        <i className="haul-out still" aria-hidden="true" />
        {strings.haulOut}
      </span>
      {hasSeason && (
        <span>
          <i className="season still" aria-hidden="true" />
          {strings.inSeason}
        </span>
      )}
    </div>
  );
}

function Entry({ kind, words }: { kind: 'service' | 'replace' | 'document'; words: string }) {
  return (
    <span>
      <i className={`mark ${kind} in_date`} aria-hidden="true" />
      {words}
    </span>
  );
}
