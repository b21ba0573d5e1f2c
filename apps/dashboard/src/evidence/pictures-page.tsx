/** One vessel's photographs: the same survey point over the visits side by side, then all others by place. */
import { isStatus } from '@garboard/client/api-problem.ts';
import { useQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import { whyItFailed } from '../api/why-it-failed.ts';
import { NotHere } from '../frame/not-here.tsx';
import { useMay } from '../organisation/may.ts';
import { strings } from '../strings/evidence.ts';
import { Failed } from '../ui/failed.tsx';
import { sentenceCase } from '../ui/number-words.ts';
import { PageHeader } from '../ui/page-header.tsx';
import { Waiting } from '../ui/waiting.tsx';
import { vesselQuery } from '../vessel/vessel.query.ts';
import { AddPictures } from './add-pictures.tsx';
import { byPoint, type Place } from './by-point.ts';
import { vesselEvidenceQuery } from './evidence.query.ts';
import { FileFigure } from './file-figure.tsx';
import './evidence.css';

const route = getRouteApi('/vessels/$vesselId/photographs');
const words = strings.vessel;

export function PicturesPage() {
  const { vesselId } = route.useParams();
  const may = useMay();
  const vessel = useQuery(vesselQuery(vesselId));
  const files = useQuery(vesselEvidenceQuery(vesselId));
  if (isStatus(vessel.error, 404)) return <NotHere />;
  const failed = vessel.error ?? files.error;
  if (failed) {
    const again = () => void Promise.all([vessel.refetch(), files.refetch()]);
    return <Failed what={words.failed} why={whyItFailed(failed)} again={again} />;
  }
  if (!vessel.data || !files.data) return <Waiting>{words.waiting}</Waiting>;
  const places = byPoint(files.data);
  const points = places.flatMap((place) => place.points).length;
  return (
    <>
      <PageHeader title={words.title(vessel.data.name)}>
        <p className="answer">{words.answer(files.data.length, points)}</p>
        {files.data.length === 0 && may.answerFindings && <p>{words.nothingHow}</p>}
        <p>
          <Link to="/vessels/$vesselId" params={{ vesselId }} className="vessel-name">
            {words.back(vessel.data.name)}
          </Link>
        </p>
      </PageHeader>
      {places.map((place) => (
        <PlaceSection key={place.zone} place={place} />
      ))}
      {may.answerFindings && <AddPictures vesselId={vesselId} />}
    </>
  );
}

function PlaceSection({ place: { zone, points, others } }: { place: Place }) {
  const name = zone === '' ? words.nowhere : sentenceCase(zone);
  return (
    <section className="picture-place" aria-label={name}>
      <h2>{name}</h2>
      {points.map(({ point, files }) => (
        <div key={point} className="point">
          <h3>{sentenceCase(point)}</h3>
          {/* Wider than a phone: it is scrolled sideways, by keys too. */}
          {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keys */}
          <ol className="pictures strip" tabIndex={0} aria-label={`${sentenceCase(point)}: ${words.over}`}>
            {files.map((file) => (
              <li key={file.id}>
                <FileFigure file={file}>{''}</FileFigure>
              </li>
            ))}
          </ol>
        </div>
      ))}
      {others.length > 0 && (
        <ul className="pictures">
          {others.map((file) => (
            <li key={file.id}>
              <FileFigure file={file} />
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
