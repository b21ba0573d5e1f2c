/** What some of a vessel's things owe together: no single line of the list owes it. */
import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { itemKindsQuery } from '../item/catalogue.query.ts';
import { strings } from '../strings/due-list.ts';
import { formatDay } from '../ui/calendar.ts';
import { inAList } from '../ui/number-words.ts';
import { Standing } from '../ui/standing.tsx';
import { samplesQuery } from './due.query.ts';

const words = strings.samples;

export function Samples({ asAt }: { asAt: string | undefined }) {
  const samples = useQuery(samplesQuery(asAt)).data?.items ?? [];
  const kinds = useQuery(itemKindsQuery()).data ?? [];
  if (samples.length === 0) return null;
  return (
    <section className="no-date" aria-labelledby="samples">
      <h2 id="samples">{words.heading}</h2>
      <p className="quiet">{words.explain}</p>
      <ul className="samples">
        {samples.map(({ vessel, kind, madeIn, by, standing, among }) => (
          <li key={`${vessel.id} ${kind} ${madeIn}`}>
            <Standing standing={standing} />{' '}
            <Link to="/vessels/$vesselId" params={{ vesselId: vessel.id }} search={{ asAt }}>
              {vessel.name}
            </Link>
            {': '}
            {words.oneOf(kinds.find(({ id }) => id === kind)?.name ?? kind, madeIn, formatDay(by))}{' '}
            <span className="quiet">{inAList(among.map(({ label }) => label))}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}
