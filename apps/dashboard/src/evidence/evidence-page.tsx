/** One photograph or paper, as large as it may be shown, with what is known of it. */
import { isStatus } from '@garboard/client/api-problem.ts';
import { useQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import { whyItFailed } from '../api/why-it-failed.ts';
import { useWho } from '../finding/who.ts';
import { NotHere } from '../frame/not-here.tsx';
import { useMay } from '../organisation/may.ts';
import { strings } from '../strings/evidence.ts';
import { nameOfZone } from '../strings/zones.ts';
import { formatDay, formatInstant } from '../ui/calendar.ts';
import { Failed } from '../ui/failed.tsx';
import { PageHeader } from '../ui/page-header.tsx';
import { Waiting } from '../ui/waiting.tsx';
import { vesselQuery } from '../vessel/vessel.query.ts';
import { type EvidenceFile, evidenceQuery, originalOf } from './evidence.query.ts';
import { Picture } from './picture.tsx';
import './evidence.css';

const route = getRouteApi('/evidence/$evidenceId');
const { one } = strings;

export function EvidencePage() {
  const { evidenceId } = route.useParams();
  const { data: file, error, isPending, refetch } = useQuery(evidenceQuery(evidenceId));
  if (isStatus(error, 404)) return <NotHere />;
  if (isPending) return <Waiting>{one.waiting}</Waiting>;
  if (!file) return <Failed what={one.failed} why={whyItFailed(error)} again={refetch} />;
  return <Shown file={file} />;
}

function Shown({ file }: { file: EvidenceFile }) {
  const may = useMay();
  const { vesselId, id, words = strings.untold } = file;
  const vessel = useQuery(vesselQuery(vesselId)).data;
  return (
    <>
      <PageHeader title={words}>
        {vessel && (
          <p>
            <Link to="/vessels/$vesselId" params={{ vesselId }} className="vessel-name">
              {vessel.name}
            </Link>
            {' · '}
            <Link to="/vessels/$vesselId/photographs" params={{ vesselId }}>
              {one.all(vessel.name)}
            </Link>
          </p>
        )}
      </PageHeader>
      {file.sizePx ? (
        <p className="picture-whole">
          <Picture id={id} words={words} size="large" />
        </p>
      ) : (
        <p className="voice">{strings.notShown}</p>
      )}
      <Facts file={file} />
      {may.takeOriginals && (
        <p className="acts">
          <a className="button" href={originalOf(id)} download>
            {one.original}
          </a>{' '}
          <span className="quiet">{one.originalHow}</span>
        </p>
      )}
    </>
  );
}

function Facts({ file }: { file: EvidenceFile }) {
  const who = useWho();
  const { zone, point, takenOn, recordedBy, recordedAt, mediaType, bytes, sizePx, visitId, sha256 } = file;
  const size = [mediaType, one.size(bytes), sizePx && one.pixels(sizePx.width, sizePx.height)]
    .filter(Boolean)
    .join(', ');
  return (
    <dl className="finding-facts">
      <Fact name={one.taken}>{formatDay(takenOn)}</Fact>
      {zone && <Fact name={one.where}>{nameOfZone(zone)}</Fact>}
      {point && <Fact name={one.point}>{point}</Fact>}
      {visitId && (
        <Fact name={one.visit}>
          <Link to="/visits/$visitId" params={{ visitId }}>
            {one.visitLink}
          </Link>
        </Fact>
      )}
      <Fact name={one.kept}>
        {who(recordedBy)}, {formatInstant(Date.parse(recordedAt))}
      </Fact>
      <Fact name={one.file}>{size}</Fact>
      <Fact name={one.hash}>
        <code>{sha256}</code>
      </Fact>
    </dl>
  );
}

function Fact({ name, children }: { name: string; children: React.ReactNode }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>{children}</dd>
    </div>
  );
}
